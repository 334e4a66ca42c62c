import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { KINDS, QUANTITY_KINDS, type UnitSystem } from '../../src/units/kinds.ts';
import { parseQuantity } from '../../src/units/parse-quantity.ts';

const SYSTEMS: readonly UnitSystem[] = ['metric', 'us'];
const kinds = fc.constantFrom(...QUANTITY_KINDS);
const systems = fc.constantFrom(...SYSTEMS);

describe('parseQuantity', () => {
  it.each([
    ['20 3/4', 'length', 'us', 0.52705],
    ['20-3/4"', 'length', 'metric', 0.52705],
    ['1-1/4"', 'length', 'metric', 0.03175],
    ['1 1/4', 'length', 'us', 0.03175],
    ['3/8 in', 'length', 'metric', 0.009525],
    ['.042', 'thickness', 'us', 0.0010668],
    ['42 thou', 'thickness', 'metric', 0.0010668],
    ['0,9 mm', 'thickness', 'us', 0.0009],
    ['293 µm', 'stretch', 'us', 293e-6],
    ["5.25'", 'longLength', 'metric', 1.6002],
    [`5' 3"`, 'longLength', 'metric', 1.6002],
    [`13 ft 2-1/2 in`, 'longLength', 'metric', 4.0259],
    [`13'2½`, 'longLength', 'us', 4.0259],
    ['27 N·m', 'torque', 'us', 27],
    ['27 Nm', 'torque', 'us', 27],
    ['20 ft·lbf', 'torque', 'metric', 27.116358966628],
    ['20 ft-lb', 'torque', 'metric', 27.116358966628],
    ['20 lb-ft', 'torque', 'metric', 27.116358966628],
    ['240 in-lb', 'torque', 'metric', 27.116358966628],
    ['2 kgf·m', 'torque', 'metric', 19.6133],
    ['120', 'stress', 'metric', 120e6],
    ['17.4', 'stress', 'us', 119968776.9011295],
    ['17 400 psi', 'stress', 'metric', 119968776.9011295],
    ['29.7 million psi', 'modulus', 'metric', 204774291607.1],
    ['700 lb', 'force', 'metric', 3113.75513068235],
    ['180°', 'turns', 'metric', 0.5],
    ['90', 'angle', 'us', Math.PI / 2],
    ['9 °F', 'temperatureDifference', 'metric', 5],
    ['7', 'percent', 'metric', 0.07],
    ['0.07 %', 'percent', 'us', 0.0007],
    ['585', 'strain', 'us', 585e-6],
    ['0.15', 'ratio', 'us', 0.15],
    ['15 %', 'ratio', 'us', 0.15],
    ['10', 'count', 'us', 10],
  ] as const)('reads %s as %s in the %s system', (text, kind, system, value) => {
    const reading = parseQuantity(text, kind, system);
    expect(reading).toMatchObject({ ok: true });
    expect(reading.ok && Math.abs(reading.value / value - 1)).toBeLessThan(1e-13);
  });

  it.each(QUANTITY_KINDS)('reads its own examples of %s, the same in both systems', (kind) => {
    for (const text of [KINDS[kind].metric.example, KINDS[kind].us.example]) {
      const reading = parseQuantity(text, kind, 'metric');
      expect(reading).toMatchObject({ ok: true, value: expect.any(Number) });
      if (/[^\d.]/.test(text)) expect(parseQuantity(text, kind, 'us')).toEqual(reading);
    }
  });
});

describe('what parseQuantity refuses', () => {
  it.each([
    [
      '',
      'length',
      'metric',
      'empty',
      'This box is empty. It takes a length, such as 35 mm or 1 3/8 in.',
    ],
    [' \u00a0', 'count', 'us', 'empty', 'This box is empty. It takes a whole number, such as 10.'],
    [
      '7 kg',
      'length',
      'metric',
      'wrongKind',
      "'7 kg' is a mass; this box takes a length, such as 35 mm or 1 3/8 in.",
    ],
    [
      '7 kg',
      'length',
      'us',
      'wrongKind',
      "'7 kg' is a mass; this box takes a length, such as 1 3/8 in or 35 mm.",
    ],
    [
      '7 kg',
      'force',
      'metric',
      'wrongKind',
      "'7 kg' is a mass; this box takes a force, such as 6500 N or 1460 lbf. For the pull on a scale marked in kilograms, write kgf.",
    ],
    [
      '20 lb/ft',
      'torque',
      'us',
      'wrongKind',
      "'20 lb/ft' is a mass per length; this box takes a torque, such as 20 ft·lbf or 27 N·m.",
    ],
    [
      '3 cubits',
      'length',
      'us',
      'unknownUnit',
      "'cubits' is not a unit known here; this box takes a length, such as 1 3/8 in or 35 mm.",
    ],
    [
      'tight',
      'torque',
      'metric',
      'notANumber',
      "'tight' is not a number. This box takes a torque, such as 27 N·m or 20 ft·lbf.",
    ],
    [
      '1.5',
      'count',
      'metric',
      'notWhole',
      "'1.5' is not whole. This box takes a whole number, such as 10.",
    ],
    ['1,200', 'force', 'us', 'thousands', "'1,200' can be read in two ways. Write 1.2 or 1200."],
    [
      `1,200' 3"`,
      'length',
      'us',
      'thousands',
      "'1,200' can be read in two ways. Write 1.2 or 1200.",
    ],
    [
      `5' 1,200`,
      'length',
      'us',
      'thousands',
      "'1,200' can be read in two ways. Write 1.2 or 1200.",
    ],
    ['1e305', 'modulus', 'metric', 'tooLarge', "'1e305' is too large."],
  ] as const)('%j as %s (%s): %s', (text, kind, system, code, reason) =>
    expect(parseQuantity(text, kind, system)).toEqual({ ok: false, code, reason }),
  );

  it('refuses a text longer than any quantity without repeating it', () => {
    const reading = parseQuantity('9'.repeat(61), 'torque', 'us');
    const reason = 'That is too long. This box takes a torque, such as 20 ft·lbf or 27 N·m.';
    expect(reading).toEqual({ ok: false, code: 'tooLong', reason });
  });

  it('never throws, and gives a finite value or a reason, whatever is typed', () => {
    const pieces = fc.constantFrom(
      '1',
      '20',
      ' ',
      ',',
      '.',
      '/',
      '-',
      "'",
      '"',
      'ft',
      'in',
      'e',
      '½',
      'N·m',
      '°',
    );
    const almost = fc.array(pieces, { maxLength: 12 }).map((parts) => parts.join(''));
    const texts = fc.oneof(fc.string({ unit: 'binary' }), almost);
    fc.assert(
      fc.property(texts, kinds, systems, (text, kind, system) => {
        const reading = parseQuantity(text, kind, system);
        if (reading.ok) expect(Number.isFinite(reading.value)).toBe(true);
        else expect(reading.reason).toMatch(/^['A-Z].*\.$/su);
      }),
      { numRuns: 2000 },
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { QUANTITY_KINDS } from '../../../src/units/kinds.ts';
import { parseQuantity } from '../../../src/units/reading/parse-quantity.ts';

const kinds = fc.constantFrom(...QUANTITY_KINDS);
const systems = fc.constantFrom('metric' as const, 'us' as const);

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
      '“7 kg” is a mass; this box takes a length, such as 35 mm or 1 3/8 in.',
    ],
    [
      '7 kg',
      'length',
      'us',
      'wrongKind',
      '“7 kg” is a mass; this box takes a length, such as 1 3/8 in or 35 mm.',
    ],
    [
      '7 kg',
      'force',
      'metric',
      'wrongKind',
      '“7 kg” is a mass; this box takes a force, such as 6500 N or 1460 lbf. For the pull on a scale marked in kilograms, write kgf.',
    ],
    [
      '20 lb/ft',
      'torque',
      'us',
      'wrongKind',
      '“20 lb/ft” is a mass per length; this box takes a torque, such as 20 ft·lbf or 27 N·m.',
    ],
    [
      '3 Hz',
      'force',
      'metric',
      'wrongKind',
      '“3 Hz” is a frequency; this box takes a force, such as 6500 N or 1460 lbf.',
    ],
    [
      "5' 3 in",
      'frequency',
      'us',
      'notANumber',
      "“5' 3 in” is not one number. This box takes a frequency, such as 108 Hz.",
    ],
    [
      'x 5 ft 3 in',
      'length',
      'us',
      'notANumber',
      '“x 5 ft 3 in” is not a number. This box takes a length, such as 1 3/8 in or 35 mm.',
    ],
    [
      '3 cubits',
      'length',
      'us',
      'unknownUnit',
      '“cubits” is not a unit known here; this box takes a length, such as 1 3/8 in or 35 mm.',
    ],
    [
      'tight',
      'torque',
      'metric',
      'notANumber',
      '“tight” is not a number. This box takes a torque, such as 27 N·m or 20 ft·lbf.',
    ],
    [
      '1.5',
      'count',
      'metric',
      'notWhole',
      '“1.5” is not whole. This box takes a whole number, such as 10.',
    ],
    ['1,200', 'force', 'us', 'thousands', '“1,200” can be read in two ways. Write 1.2 or 1200.'],
    [
      `1,200' 3"`,
      'length',
      'us',
      'thousands',
      '“1,200” can be read in two ways. Write 1.2 or 1200.',
    ],
    [
      `5' 1,200`,
      'length',
      'us',
      'thousands',
      '“1,200” can be read in two ways. Write 1.2 or 1200.',
    ],
    ['1e305', 'modulus', 'metric', 'tooLarge', '“1e305” is too large.'],
  ] as const)('%j as %s (%s): %s', (text, kind, system, code, reason) =>
    expect(parseQuantity(text, kind, system)).toEqual({ ok: false, code, reason }),
  );

  it('refuses a text longer than any quantity without repeating it', () => {
    const zeros = '0'.repeat(59);
    expect(parseQuantity(`${zeros}9`, 'torque', 'metric')).toEqual({ ok: true, value: 9 });
    const reading = parseQuantity(`${zeros}09`, 'torque', 'us');
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
        else expect(reading.reason).toMatch(/^[“A-Z].*\.$/su);
      }),
      { numRuns: 2000 },
    );
  });
});

import { describe, expect, it } from 'vitest';
import { QUANTITY_KINDS } from '../../../src/units/kinds.ts';
import { ASKED } from '../../../src/units/reading/asked.ts';
import { parseQuantity } from '../../../src/units/reading/parse-quantity.ts';

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
    ['5 feet 3 inches', 'longLength', 'metric', 1.6002],
    ['5 ft 3 inch', 'longLength', 'metric', 1.6002],
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
    ['17400', 'stress', 'us', 119968776.9011295],
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
    for (const text of [ASKED[kind].metric, ASKED[kind].us]) {
      const reading = parseQuantity(text, kind, 'metric');
      expect(reading).toMatchObject({ ok: true, value: expect.any(Number) });
      if (/[^\d.]/.test(text)) expect(parseQuantity(text, kind, 'us')).toEqual(reading);
    }
  });
});

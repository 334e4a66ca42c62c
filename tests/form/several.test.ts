/** Several readings of one quantity in one box. */
import { describe, expect, it } from 'vitest';
import { readBox } from '../../src/form/box.ts';
import { FIELDS } from '../../src/form/fields.ts';
import { sheetReader } from '../../src/form/reading.ts';
import { areBareNumbers, severalReadings } from '../../src/form/several.ts';
import { typedFrom } from '../../src/form/typed.ts';
import { bareUnits, inUnits } from '../../src/form/units.ts';

const FIVE = '1.02 1.01 1.03 1.02 1.01';
const plain = (text = '') => text.replace(/[\u00a0\u202f]/g, ' ');
const thickness = (typed: string, system: 'metric' | 'us' = 'metric') =>
  readBox(typed, FIELDS['band.thickness'], system);

describe('several readings', () => {
  it('match the hand-worked case: mean 1.018 mm, s 0.00837 mm, over √5', () => {
    const found = severalReadings(FIVE, 'thickness', 'metric');
    expect(found).toMatchObject({ count: 5, low: 1.01e-3, high: 1.03e-3 });
    expect(found?.mean).toBeCloseTo(1.018e-3, 12);
    expect(found?.scatter).toBeCloseTo(Math.sqrt(0.00028 / 4 / 5) * 1e-3, 12);
  });

  it.each([
    [FIVE, 'metric', 1.018e-3],
    ['1,02 1,04', 'metric', 1.03e-3],
    ['1.02; 1.04', 'metric', 1.03e-3],
    ['1.02, 1.04', 'metric', 1.03e-3],
    ['1.02 1.04 mm', 'us', 1.03e-3],
    ['1.02 mm 1.04mm', 'us', 1.03e-3],
    ['.040 .042', 'us', 0.041 * 0.0254],
    ['40 42 thou', 'us', 0.041 * 0.0254],
    ['3/64 1/16', 'us', (7 / 128) * 0.0254],
  ] as const)('%s in %s boxes', (typed, system, mean) =>
    expect(severalReadings(typed, 'thickness', system)?.mean).toBeCloseTo(mean, 12),
  );

  it.each(['1.02', '1.02 thick', '1.02 about 1.03', 'five', '1.02 3 kg', ''])(
    '%s is not that',
    (typed) => expect(severalReadings(typed, 'thickness', 'metric')).toBeUndefined(),
  );

  it('have no unit where none of them has', () => {
    expect(areBareNumbers(FIVE)).toBe(true);
    expect(areBareNumbers('1.02 1.01 mm')).toBe(false);
    expect(areBareNumbers('1.02')).toBe(false);
  });
});

describe('a box', () => {
  it('that takes several says their mean, and that it is unusual where it is', () => {
    expect(plain(thickness(FIVE).doubt)).toBe('Mean of 5: 1.018 mm.');
    expect(plain(thickness('0.4 0.4').doubt)).toMatch(
      /^Mean of 2: 0\.4 mm\. That is .* Usual here/,
    );
  });

  it('refuses what cannot be one size, and what is beyond all use', () => {
    expect(plain(thickness('1.02 1.01 10.3').refusal)).toMatch(/too far apart to be one size/);
    expect(plain(thickness('102 101').refusal)).toMatch(/^That is .* Check the unit\.$/);
    expect(thickness('1 -1').value).toBeUndefined();
  });

  it('that takes one number says the mean of what was typed', () => {
    const read = readBox('29 30', FIELDS['band.bodyWidth'], 'metric');
    expect(plain(read.refusal)).toBe('This box takes one number. The mean of your 2 is 29.5 mm.');
    expect(read.value).toBeUndefined();
  });
});

describe('on the sheet', () => {
  const typed = typedFrom([['band.thickness', FIVE]]);

  it('the mean is the thickness, and the scatter goes along', () => {
    const { band } = sheetReader()(typed, 'metric').worksheet;
    expect(band.thickness).toBeCloseTo(1.018e-3, 12);
    expect(band.thicknessScatter).toBeCloseTo(3.742e-6, 9);
  });

  it('they mean the same after a change of units and back', () => {
    const inUs = inUnits(typed, bareUnits('metric'), bareUnits('us'));
    expect(inUs['band.thickness']).toBe(`${FIVE} mm`);
    expect(inUnits(inUs, bareUnits('us'), bareUnits('metric'))).toEqual(typed);
  });
});

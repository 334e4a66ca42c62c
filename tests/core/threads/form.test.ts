import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  acmePitchDiameter2G,
  inch,
  pitchDiameter,
  sharpHeight,
  threadHalfAngle,
} from '../../../src/core/threads/form.ts';

const forms = ['square', 'acme', 'trapezoidal', 'v60'] as const;
const anySize = fc
  .tuple(
    fc.double({ min: 0.005, max: 0.1, noNaN: true }),
    fc.double({ min: 0.02, max: 0.45, noNaN: true }),
  )
  .map(([majorDiameter, share]) => ({ majorDiameter, pitch: share * majorDiameter }));

describe('pitchDiameter', () => {
  it.each([
    ['M12', 12, 1.75, 10.863],
    ['M16', 16, 2, 14.701],
    ['M20', 20, 2.5, 18.376],
    ['M22', 22, 2.5, 20.376],
    ['M36', 36, 4, 33.402],
  ])('of %s is the printed one of ISO 724', (_, diameter, pitch, printed) =>
    expect(pitchDiameter('v60', { majorDiameter: diameter, pitch })).toBeCloseTo(printed, 3),
  );
  it.each([
    ['Tr12x3', 12, 3, 10.5],
    ['Tr16x2', 16, 2, 15],
    ['Tr36x6', 36, 6, 33],
  ])('of %s is the printed one of ISO 2904', (_, diameter, pitch, printed) =>
    expect(pitchDiameter('trapezoidal', { majorDiameter: diameter, pitch })).toBe(printed),
  );
  it('is half a pitch below the outside for a square thread: Bhandari, Example 6.1, 46 mm', () =>
    expect(pitchDiameter('square', { majorDiameter: 50, pitch: 8 })).toBe(46));
  it.each(forms)('lies between outside and one pitch below it for %s', (form) =>
    fc.assert(
      fc.property(anySize, (size) => {
        const middle = pitchDiameter(form, size);
        expect(middle).toBeLessThan(size.majorDiameter);
        expect(middle).toBeGreaterThan(size.majorDiameter - size.pitch);
      }),
    ),
  );
  it.each([
    [{ majorDiameter: 0, pitch: 1 }, /majorDiameter must be above 0 m/],
    [{ majorDiameter: 20, pitch: 0 }, /pitch must be above 0 m/],
    [{ majorDiameter: 20, pitch: 10 }, /pitch must be below 10 m \(was 10\)/],
  ])('refuses %o', (wrong, message) => expect(() => pitchDiameter('v60', wrong)).toThrow(message));
});

describe('acmePitchDiameter2G', () => {
  it.each([
    ['1/2-10', 0.5, 10, 0.4443],
    ['3/4-6', 0.75, 6, 0.6598],
    ['1-5', 1, 5, 0.892],
    ['1 1/8-5', 1.125, 5, 1.0165],
  ])('of %s is the printed largest one of ASME B1.5, class 2G', (_, diameter, perInch, printed) => {
    const size = { majorDiameter: diameter * inch, pitch: inch / perInch };
    expect(Math.abs(acmePitchDiameter2G(size) / inch - printed)).toBeLessThan(1.01e-4);
  });
});

describe('the sharp triangle', () => {
  it('of pitch 2 is √3 high', () => expect(sharpHeight(2)).toBeCloseTo(Math.sqrt(3), 15));
});

describe('threadHalfAngle', () => {
  it('is half of 0, 29, 30 and 60 degrees', () =>
    expect(forms.map((form) => (threadHalfAngle[form] * 360) / Math.PI)).toEqual([
      0,
      expect.closeTo(29, 12),
      expect.closeTo(30, 12),
      expect.closeTo(60, 12),
    ]));
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bandStiffness,
  bandStiffnessBeforeRolling,
  bandStiffnessLocked,
  wrapEffectiveLength,
} from '../../../src/core/loop/band-stiffness.ts';
import { freeStrand, loopLength, strandHalfAngle } from '../../../src/core/loop/geometry.ts';

const steel = { youngsModulus: 205e9, area: 30e-6 };
const equal = { wheelDiameter1: 0.48, wheelDiameter2: 0.48, centreDistance: 1.25 };
const diameter = fc.double({ min: 0.3, max: 1, noNaN: true });
const friction = fc.double({ min: 0.01, max: 1, noNaN: true });
const anyWheels = fc
  .tuple(diameter, diameter, fc.double({ min: 0.1, max: 2, noNaN: true }))
  .map(([wheelDiameter1, wheelDiameter2, gap]) => ({
    wheelDiameter1,
    wheelDiameter2,
    centreDistance: (wheelDiameter1 + wheelDiameter2) / 2 + gap,
  }));

describe('bandStiffness', () => {
  it('is 4EA/L on equal wheels: 6.1347 MN/m, derived here', () =>
    expect(bandStiffness(steel, 4.01)).toBeCloseTo(6_134_663.341645885, 5));
  it('falls by cos²β where the strands lean', () =>
    expect(bandStiffness(steel, 4.01, 0.1) / bandStiffness(steel, 4.01)).toBeCloseTo(
      Math.cos(0.1) ** 2,
      14,
    ));
  it('is what virtual work asks: 2·cos β·T against the loop stretched by 2x·cos β', () => {
    const wheels = { wheelDiameter1: 0.6, wheelDiameter2: 0.45, centreDistance: 1.5 };
    const loop = (centreDistance: number) =>
      loopLength({ ...wheels, centreDistance, thickness: 0.001 });
    const [length, lean] = [loop(1.5), strandHalfAngle(wheels)];
    const strandPull = (205e9 * 30e-6 * (loop(1.5 + 1e-6) - length)) / length;
    const wheelPull = 2 * strandPull * Math.cos(lean);
    expect(bandStiffness(steel, length, lean) / (wheelPull / 1e-6)).toBeCloseTo(1, 5);
  });
});

describe('bandStiffnessLocked', () => {
  it('is 2EA/s: 9.84 MN/m on a strand of 1.25 m, derived here', () =>
    expect(bandStiffnessLocked(steel, 1.25)).toBeCloseTo(9.84e6, 4));
});

describe('wrapEffectiveLength', () => {
  it('is the strain integrated round the rims: derived here, mid-point sum of exp(−μθ)', () => {
    const steps = 20_000;
    const step = Math.PI / 2 / steps;
    let quarter = 0;
    for (let i = 0; i < steps; i += 1) quarter += 0.24 * step * Math.exp(-0.2 * step * (i + 0.5));
    expect(wrapEffectiveLength(equal, 0.2)).toBeCloseTo(2.5 + 4 * quarter, 9);
  });
  it('is so on unequal wheels, each over its own half wrap: mid-point sums', () => {
    const wheels = { wheelDiameter1: 0.6, wheelDiameter2: 0.45, centreDistance: 1.5 };
    const lean = Math.asin(0.05); // (0.6 − 0.45)/(2 × 1.5)
    const half = (diameter: number, wrap: number) => {
      const steps = 20_000;
      const step = wrap / 2 / steps;
      let sum = 0;
      for (let i = 0; i < steps; i += 1) sum += Math.exp(-0.25 * step * (i + 0.5));
      return (sum * step * diameter) / 2;
    };
    const [large, small] = [half(0.6, Math.PI + 2 * lean), half(0.45, Math.PI - 2 * lean)];
    const strands = 2 * 1.5 * Math.cos(lean);
    expect(wrapEffectiveLength(wheels, 0.25)).toBeCloseTo(strands + 2 * large + 2 * small, 9);
  });
  it('is the whole middle line of the rims without friction', () =>
    expect(wrapEffectiveLength(equal, 0)).toBeCloseTo(2.5 + Math.PI * 0.48, 12));
  it('is only the free strands where nothing can slip', () =>
    expect(wrapEffectiveLength(equal, 1e9)).toBeCloseTo(2.5, 6));
  it('does not mind which wheel comes first', () => {
    const wheels = { wheelDiameter1: 0.6, wheelDiameter2: 0.45, centreDistance: 1.5 };
    const swapped = { wheelDiameter1: 0.45, wheelDiameter2: 0.6, centreDistance: 1.5 };
    expect(wrapEffectiveLength(swapped, 0.3)).toBe(wrapEffectiveLength(wheels, 0.3));
  });
  it('refuses a friction below none', () =>
    expect(() => wrapEffectiveLength(equal, -0.1)).toThrow(/friction must be at least 0/));
});

describe('bandStiffnessBeforeRolling', () => {
  it('lies between the rolled and the locked band', () =>
    fc.assert(
      fc.property(anyWheels, friction, (wheels, rub) => {
        const lean = strandHalfAngle(wheels);
        const rolled = bandStiffness(steel, loopLength({ ...wheels, thickness: 1e-9 }), lean);
        const before = bandStiffnessBeforeRolling(steel, wheels, rub);
        expect(before).toBeGreaterThan(rolled);
        expect(before).toBeLessThan(bandStiffnessLocked(steel, freeStrand(wheels), lean));
      }),
    ));
  it('is 5 to 8 % above the rolled band for a rim friction of 0.2 to 0.3: derived here', () => {
    const rolled = bandStiffness(steel, loopLength({ ...equal, thickness: 0.0011 }));
    expect(bandStiffnessBeforeRolling(steel, equal, 0.2) / rolled).toBeGreaterThan(1.05);
    expect(bandStiffnessBeforeRolling(steel, equal, 0.3) / rolled).toBeLessThan(1.09);
  });
});

describe('a band', () => {
  it.each([
    [{ ...steel, youngsModulus: 0 }, 4, /youngsModulus must be above 0 Pa/],
    [{ ...steel, area: -1 }, 4, /area must be above 0 m²/],
    [steel, 0, /loopLength must be above 0 m/],
  ])('is refused if %o on %s m', (wrong, length, message) =>
    expect(() => bandStiffness(wrong, length)).toThrow(message),
  );
  it('is refused without a strand', () =>
    expect(() => bandStiffnessLocked(steel, 0)).toThrow(/freeStrand must be above 0 m/));
});

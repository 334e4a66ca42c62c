import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  edgeBendingFactor,
  meanBendingFactor,
  widthParameter,
} from '../../../src/core/wheel/wide-strip.ts';

const strip = { width: 0.035, bendRadius: 0.25, thickness: 0.0011, poissonsRatio: 0.3 };
const plate = 1 / (1 - 0.3 ** 2);

describe('widthParameter', () => {
  it('is 2.713 for 35 mm by 1.1 mm bent to 250 mm, by hand: 1.28539 × 35/√275', () =>
    expect(widthParameter(strip)).toBeCloseTo((2.73 ** 0.25 * 35) / Math.sqrt(275), 12));

  it('does not change with the unit of length', () =>
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (scale) => {
        const scaled = {
          width: strip.width * scale,
          bendRadius: strip.bendRadius * scale,
          thickness: strip.thickness * scale,
          poissonsRatio: 0.3,
        };
        expect(widthParameter(scaled)).toBeCloseTo(widthParameter(strip), 10);
      }),
    ));

  it.each(['width', 'bendRadius', 'thickness'])('refuses %s of 0', (name) =>
    expect(() => widthParameter({ ...strip, [name]: 0 })).toThrow(`${name} must be above 0 m`),
  );

  it('refuses a Poisson ratio beyond a half', () =>
    expect(() => widthParameter({ ...strip, poissonsRatio: 0.6 })).toThrow('between 0 and 0.5'));
});

/**
 * The same mean by another way: the curve across the strip is a·cos·cosh + b·sin·sinh, freely curled
 * and without shear at the edge, and its curvature is summed up from the middle to the edge.
 */
function summedMean(parameter: number, poissonsRatio: number): number {
  const half = parameter / 2;
  const oneWay = Math.cos(half) * Math.sinh(half);
  const otherWay = Math.sin(half) * Math.cosh(half);
  const a = (oneWay - otherWay) / (oneWay + otherWay);
  const curl = (y: number) => Math.cos(y) * Math.cosh(y) - a * Math.sin(y) * Math.sinh(y);
  const steps = 2000;
  let total = 0;
  for (let i = 0; i < steps; i += 1) total += curl(((i + 0.5) / steps) * half);
  const freeShare = total / steps / curl(half);
  return (1 - poissonsRatio ** 2 * freeShare) / (1 - poissonsRatio ** 2);
}

describe('meanBendingFactor', () => {
  it.each([0.5, 2.713, 5])('matches the shell strip summed step by step at λ = %s', (parameter) =>
    expect(meanBendingFactor(parameter, 0.3)).toBeCloseTo(summedMean(parameter, 0.3), 6),
  );

  it('starts at 1 for a narrow strip and ends near the plate for a wide one', () => {
    expect(meanBendingFactor(1e-6, 0.3)).toBeCloseTo(1, 12);
    expect(meanBendingFactor(5000, 0.3)).toBeCloseTo(plate - (2 * 0.09) / 5000 / 0.91, 9);
  });

  it('stays between 1 and the plate', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 2000, noNaN: true }), (parameter) => {
        const factor = meanBendingFactor(parameter, 0.3);
        expect(factor).toBeGreaterThanOrEqual(1);
        expect(factor).toBeLessThan(plate);
      }),
    ));

  it('refuses no width and a Poisson ratio below 0', () => {
    expect(() => meanBendingFactor(0, 0.3)).toThrow('parameter must be above 0');
    expect(() => meanBendingFactor(1, -0.1)).toThrow('poissonsRatio must be between');
  });
});

describe('edgeBendingFactor', () => {
  it('is 1.1625 at λ = 2.713, by hand from sinh 7.503 and sin 0.416', () => {
    const [sinh, sin] = [Math.sinh(2.712953557), Math.sin(2.712953557)];
    const hand = 1 + (0.3 / Math.sqrt(2.73)) * ((sinh - sin) / (sinh + sin));
    expect(hand).toBeCloseTo(1.1625, 4);
    expect(edgeBendingFactor(2.712953557, 0.3)).toBeCloseTo(hand, 12);
  });

  it('runs from 1 to 1 + ν/√(3(1 − ν²))', () => {
    expect(edgeBendingFactor(1e-4, 0.3)).toBeCloseTo(1, 8);
    expect(edgeBendingFactor(5000, 0.3)).toBeCloseTo(1 + 0.3 / Math.sqrt(2.73), 12);
  });

  it('is 1 whatever the width where nothing contracts sideways', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 2000, noNaN: true }), (parameter) => {
        expect(edgeBendingFactor(parameter, 0)).toBe(1);
        expect(meanBendingFactor(parameter, 0)).toBe(1);
      }),
    ));

  it('refuses no width and a Poisson ratio beyond a half', () => {
    expect(() => edgeBendingFactor(-1, 0.3)).toThrow('parameter must be above 0');
    expect(() => edgeBendingFactor(1, 0.51)).toThrow('poissonsRatio must be between');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { discDeflection, discForce, discStiffness } from '../../../src/core/loop/disc-spring.ts';
import { stackForce, stackStiffness, stackTravel } from '../../../src/core/loop/disc-stack.ts';

const disc = {
  outerDiameter: 0.0315,
  innerDiameter: 0.0163,
  thickness: 0.00175,
  coneHeight: 0.0007,
  youngsModulus: 206e9,
  poissonsRatio: 0.3,
};
const eight = { disc, groupsInSeries: 8 };
const load = 3140.53; // N
const count = fc.integer({ min: 1, max: 12 });
const anyForce = fc.double({ min: 1, max: 4000, noNaN: true });

describe('a stack', () => {
  it('of eight discs at 3140.5 N travels 3.3412 mm and is 0.8624 MN/m stiff: derived here', () => {
    expect(stackTravel(eight, load)).toBeCloseTo(3.3412e-3, 7);
    expect(stackStiffness(eight, load)).toBeCloseTo(862_401, -1);
  });
  it('of one disc is the disc', () => {
    const one = { disc, groupsInSeries: 1 };
    expect(stackTravel(one, load)).toBe(discDeflection(disc, load));
    expect(stackForce(one, 0.0003)).toBe(discForce(disc, 0.0003));
    expect(stackStiffness(one, load)).toBe(discStiffness(disc, discDeflection(disc, load)));
  });
  it('multiplies travel by groups in series and force by discs nested', () =>
    fc.assert(
      fc.property(count, count, anyForce, (groupsInSeries, nestedInGroup, force) => {
        const stack = { disc, groupsInSeries, nestedInGroup };
        const travel = stackTravel(stack, nestedInGroup * force);
        expect(travel / (groupsInSeries * discDeflection(disc, force))).toBeCloseTo(1, 9);
        expect(stackForce(stack, travel) / (nestedInGroup * force)).toBeCloseTo(1, 8);
      }),
    ));
  it('is as stiff as its own force curve is steep', () => {
    const nested = { ...eight, nestedInGroup: 2 };
    const travel = stackTravel(nested, load);
    const slope = (stackForce(nested, travel + 1e-7) - stackForce(nested, travel - 1e-7)) / 2e-7;
    expect(stackStiffness(nested, load) / slope).toBeCloseTo(1, 6);
  });
  it('is refused without a disc, or half a disc nested', () => {
    expect(() => stackTravel({ disc, groupsInSeries: 0 }, 1)).toThrow(
      /groupsInSeries must be at least 1/,
    );
    expect(() => stackForce({ ...eight, nestedInGroup: 0.5 }, 0)).toThrow(
      /nestedInGroup must be at least 1/,
    );
    expect(() => stackStiffness({ disc, groupsInSeries: Number.NaN }, 1)).toThrow(
      /groupsInSeries must be at least 1/,
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { agreementNumber, zetaScore } from '../../src/core/agreement.ts';

const amount = fc.double({ min: 0.1, max: 100, noNaN: true });

describe('agreementNumber', () => {
  it('agrees with the worked output of the NIST Dataplot manual, En scores (data GEAR.DAT)', () => {
    const reference = { value: 1, expanded: 0.012557809755629597 };
    const laboratory = (value: number) => ({ value, expanded: 0.008692269873603532 });
    expect(agreementNumber(laboratory(1.006), reference)).toBeCloseTo(0.393, 3);
    expect(agreementNumber(laboratory(0.996), reference)).toBeCloseTo(-0.262, 3);
    expect(agreementNumber(laboratory(1), reference)).toBe(0);
  });
  it('is 1 where the intervals touch as a right angle would have it', () =>
    expect(agreementNumber({ value: 5, expanded: 3 }, { value: 0, expanded: 4 })).toBe(1));
  it('turns its sign when the two change places, and has no unit', () =>
    fc.assert(
      fc.property(amount, amount, amount, amount, amount, (x1, u1, x2, u2, factor) => {
        const [first, second] = [
          { value: x1, expanded: u1 },
          { value: x2, expanded: u2 },
        ];
        const score = agreementNumber(first, second);
        const scaled = (r: typeof first) => ({
          value: factor * r.value,
          expanded: factor * r.expanded,
        });
        expect(agreementNumber(second, first)).toBeCloseTo(-score, 12);
        expect(agreementNumber(scaled(first), scaled(second))).toBeCloseTo(score, 9);
      }),
    ));
  it('refuses values that are not finite and uncertainties below 0 or both 0', () => {
    const result = { value: 1, expanded: 1 };
    expect(() => agreementNumber({ value: Number.NaN, expanded: 1 }, result)).toThrow(/difference/);
    expect(() => agreementNumber({ value: 1, expanded: -1 }, result)).toThrow(/first uncertainty/);
    expect(() => agreementNumber(result, { value: 1, expanded: -1 })).toThrow(/second uncertainty/);
    const exact = { value: 1, expanded: 0 };
    expect(() => agreementNumber(exact, exact)).toThrow(/both uncertainties together/);
  });
});

describe('zetaScore', () => {
  it('is twice E_n where both U are 2u (ISO 13528)', () => {
    const zeta = zetaScore({ value: 838, standard: 31.66 }, { value: 800, standard: 25 });
    const en = agreementNumber({ value: 838, expanded: 63.32 }, { value: 800, expanded: 50 });
    expect(zeta).toBeCloseTo(2 * en, 14);
  });
});

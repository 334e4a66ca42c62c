import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mean, standardDeviation, sum } from '../../../src/core/statistics/moments.ts';
import { evenly } from '../../evenly.ts';

/** NIST StRD, univariate: NumAcc3 and NumAcc4 are one middle value, then pairs about it. */
function alternating(middle: number, below: number, above: number): number[] {
  return [middle, ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? below : above))];
}

const numAcc1 = [10000001, 10000003, 10000002];
const numAcc3 = alternating(1000000.2, 1000000.1, 1000000.3);
const numAcc4 = alternating(10000000.2, 10000000.1, 10000000.3);
const mavro = [
  20018, 20017, 20018, 20019, 20018, 20017, 20015, 20014, 20015, 20015, 20017, 20018, 20018, 20019,
  20019, 20021, 20020, 20016, 20014, 20013, 20013, 20015, 20015, 20016, 20015, 20014, 20013, 20014,
  20015, 20014, 20015, 20016, 20015, 20016, 20019, 20020, 20020, 20021, 20022, 20023, 20024, 20025,
  20027, 20026, 20026, 20026, 20027, 20026, 20025, 20024,
].map((tenThousandths) => tenThousandths / 1e4);

const values = fc.array(evenly(-1e3, 1e3), {
  minLength: 2,
  maxLength: 30,
});

describe('sum', () => {
  it('keeps what plain addition drops', () => expect(sum([1, 1e100, 1, -1e100])).toBe(2));
  it('is 0 for no values', () => expect(sum([])).toBe(0));
});

describe('mean', () => {
  it.each([
    ['NumAcc1', numAcc1, 10000002],
    ['NumAcc3', numAcc3, 1000000.2],
    ['NumAcc4', numAcc4, 10000000.2],
    ['Mavro', mavro, 2.001856],
  ])('agrees with the certified mean of NIST StRD %s', (_, data, certified) =>
    expect(mean(data) / certified).toBeCloseTo(1, 14),
  );
  it('moves with the values', () =>
    fc.assert(
      fc.property(values, (list) => {
        expect(mean(list.map((value) => value + 1000))).toBeCloseTo(mean(list) + 1000, 9);
      }),
    ));
  it('refuses an empty list', () =>
    expect(() => mean([])).toThrow('number of values must be at least 1 (was 0)'));
  it('refuses what is not a number and says where', () =>
    expect(() => mean([1, Number.NaN])).toThrow(/values\[1\] must be a finite number/));
});

describe('standardDeviation', () => {
  it.each([
    ['NumAcc1', numAcc1, 1, 15],
    ['NumAcc3', numAcc3, 0.1, 9],
    ['NumAcc4', numAcc4, 0.1, 7],
    ['Mavro', mavro, 0.000429123454003053, 12],
  ])('agrees with the certified value of NIST StRD %s', (_, data, certified, digits) =>
    expect(standardDeviation(data) / certified).toBeCloseTo(1, digits),
  );
  it('of 0, 2 and 2 is √(4/3) by hand, even so far out that the mean must be rounded', () =>
    expect(standardDeviation([1e16, 1e16 + 2, 1e16 + 2])).toBeCloseTo(Math.sqrt(4 / 3), 14));
  it('is 0 for equal values', () => expect(standardDeviation([0.1, 0.1, 0.1])).toBe(0));
  it('does not see a shift, and grows with a factor', () =>
    fc.assert(
      fc.property(values, (list) => {
        const s = standardDeviation(list);
        expect(standardDeviation(list.map((value) => value - 500))).toBeCloseTo(s, 9);
        expect(standardDeviation(list.map((value) => -3 * value))).toBeCloseTo(3 * s, 9);
      }),
    ));
  it('refuses a single value', () =>
    expect(() => standardDeviation([1])).toThrow('number of values must be at least 2 (was 1)'));
});

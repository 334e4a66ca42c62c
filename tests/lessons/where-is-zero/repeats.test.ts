/** The histograms of the lesson: they count what the core's study of coverage counted, and what the bench's truth says. */
import { beforeAll, describe, expect, it } from 'vitest';
import { randomSource } from '../../../src/core/random.ts';
import { first } from '../../../src/lessons/where-is-zero/repeats/first.worked.ts';
import { repeatAt, zerosIn } from '../../../src/lessons/where-is-zero/repeats/repeat.ts';
import { BIN, REACH, RULES } from '../../../src/lessons/where-is-zero/repeats/rules.ts';
import { simulated } from '../../../src/lessons/where-is-zero/repeats/simulated.ts';
import {
  joined,
  type Repeat,
  type Tally,
  tallyOf,
  typicalError,
} from '../../../src/lessons/where-is-zero/repeats/tally.ts';
import { LOT } from '../../../src/lessons/where-is-zero/taking.ts';
import table from '../../study/coverage-table.json' with { type: 'json' };
import { fullGrid, torqueCases, torqueReadings } from '../../study/torque-cases.ts';

const SERIES_PER_KIND = 2;

/** The lesson's own counting of the study's series; the study's zero is 0, its loads are shares. */
function tallyOfStudy(): Tally {
  const repeats = torqueCases(fullGrid).flatMap((kind, place) => {
    const random = randomSource(90_000 + place);
    return Array.from({ length: SERIES_PER_KIND }, (): Repeat => {
      const readings = torqueReadings(kind, random);
      const found = zerosIn({ torques: kind.loads, readings, dragTorque: 0 }, random, kind.noise);
      return { trueZero: 0, found };
    });
  });
  return tallyOf(repeats);
}

/** Standard error of a share, counted so many times. */
const standardError = (share: number, count: number) => Math.sqrt((share * (1 - share)) / count);

describe('the count of the lesson, over the series of the study', () => {
  let tally: Tally;
  beforeAll(() => {
    tally = tallyOfStudy();
  }, 60_000);

  it.each([
    ['classroom', table.ways.upperHalf],
    ['full', table.ways.envelope],
  ] as const)('has the published coverage and error: %s', (rule, published) => {
    const share = tally.rules[rule].held / tally.repeats;
    const error = 4 * standardError(published.coverage, tally.repeats);
    expect(Math.abs(share - published.coverage)).toBeLessThan(error);
    expect(typicalError(tally, rule) / published.rmse).toBeGreaterThan(0.85);
    expect(typicalError(tally, rule) / published.rmse).toBeLessThan(1.15);
  });
  it.each(['needle', 'ruler'] as const)('has the published error: %s', (rule) => {
    const ratio = typicalError(tally, rule) / table.ways[rule].rmse;
    expect(ratio).toBeGreaterThan(0.85);
    expect(ratio).toBeLessThan(1.15);
  });
});

describe('the first lot', () => {
  const sizeOf = (counts: readonly number[]) => counts.reduce((sum, count) => sum + count, 0);

  it('counts every series once in each histogram', () => {
    expect(first.repeats).toBe(LOT);
    for (const rule of RULES) expect(sizeOf(first.rules[rule].bins)).toBe(LOT);
  });
  it('has in its bins the spread that it tells', () => {
    for (const rule of RULES) {
      const squares = first.rules[rule].bins.map(
        (count, bin) => count * ((bin + 0.5) * BIN - REACH) ** 2,
      );
      const binned = Math.sqrt(sizeOf(squares) / LOT);
      expect(Math.abs(binned - typicalError(first, rule))).toBeLessThan(BIN / 4);
    }
  });
  it('ranks the ways as the study does, and holds the truth as often as is promised', () => {
    const [needle, ruler, , full] = RULES.map((rule) => typicalError(first, rule));
    expect(needle).toBeGreaterThan(3 * (ruler ?? 0));
    expect(ruler).toBeGreaterThan(1.15 * (full ?? 0));
    expect(first.rules.full.held / LOT).toBeGreaterThan(0.97);
    expect(first.rules.classroom.held / LOT).toBeGreaterThan(0.88);
    expect([first.rules.needle.held, first.rules.ruler.held]).toEqual([0, 0]);
  });
});

describe('a count', () => {
  const found = (zero: number, low = zero - 1e-6, high = zero + 1e-6) => ({ zero, low, high });
  const repeat = (error: number): Repeat => ({
    trueZero: 40e-6,
    found: {
      needle: { zero: 40e-6 + error },
      ruler: { zero: 40e-6 + error },
      classroom: found(40e-6 + error),
      full: found(40e-6 + error, 0, 1),
    },
  });

  it('puts an error into the bin about it, and leaves out what is off the scale', () => {
    const { bins } = tallyOf([repeat(0), repeat(2e-6), repeat(-10e-6), repeat(1)]).rules.ruler;
    expect(bins).toHaveLength(53);
    expect(bins[26]).toBe(2);
    expect(bins[24]).toBe(1);
    expect(bins.reduce((sum, count) => sum + count)).toBe(3);
  });
  it('holds the truth where the interval has it', () => {
    const { rules } = tallyOf([repeat(0), repeat(5e-6)]);
    expect([rules.classroom.held, rules.full.held, rules.needle.held]).toEqual([1, 2, 0]);
  });
  it('is the same in one go and in two', () => {
    const all = [3, 1, 4, 1, 5].map((error) => repeat(error * 1e-6));
    expect(joined(tallyOf(all.slice(0, 2)), tallyOf(all.slice(2)))).toEqual(tallyOf(all));
  });
  it('is always of the same series', () => expect(repeatAt(7)).toEqual(repeatAt(7)));
});

describe('what is shown', () => {
  it('is the first lot where nothing is painted, however many are asked for', () => {
    expect(simulated(LOT)).toEqual(first);
    expect(simulated(3 * LOT)).toEqual(first);
  });
});

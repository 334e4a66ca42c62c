/** Several series, and both together, by simulation: as often right and as narrow as they are said to be. */
import { describe, expect, it } from 'vitest';
import { type RandomSource, randomSource } from '../../src/core/random.ts';
import { tQuantile } from '../../src/core/student.ts';
import { worksheetBoth } from '../../src/core/worksheet/decide/both.ts';
import { emptyWorksheet } from '../../src/core/worksheet/empty.ts';
import { ready } from '../../src/core/worksheet/outcome.ts';
import { zeroFromTorque } from '../../src/core/zero.ts';
import { numbersOf, refusalOf } from '../core/fixtures/ready.ts';
import {
  counted,
  type Found,
  found,
  type JoinedWay,
  joinedCases,
  joinedReadings,
} from './joined-cases.ts';

const LONG = [300e-6, 500e-6] as const;
const SHORT = [120e-6, 200e-6] as const;
const THEORY = 0.115; // relative standard uncertainty of the prediction

/** Every cell, so many times, each with random numbers of its own. */
function simulated(
  times: number,
  one: (cell: (typeof joinedCases)[number], random: RandomSource) => Found | undefined,
) {
  return counted(
    joinedCases.flatMap((cell, place) => {
      const random = randomSource(1 + place);
      return Array.from({ length: times }, () => one(cell, random)).filter(
        (each) => each !== undefined,
      );
    }),
  );
}

function series(way: Omit<JoinedWay, 'stretch'>, times: number) {
  return simulated(times, (cell, random) => {
    const { stretch, taken } = joinedReadings(cell, { ...way, stretch: LONG }, random);
    const { elongation, elongationLow, elongationHigh } = zeroFromTorque(taken);
    return found(stretch, elongation, elongationLow, elongationHigh);
  });
}

describe('several series joined', () => {
  // µm, as found over 72 cells x 100 with toes of other lengths; here 72 x 3: ± 2/sqrt(2·216) = 10 % of an error,
  // and as much again for the lengths of the toes; a coverage ± 3·√(0.026·0.974/216) = 3.2 %.
  it.each([
    [1, true, 0.03, 9.8, 27.0, 98.7],
    [2, true, 0.03, 7.2, 17.6, 98.1],
    [3, true, 0.03, 6.0, 14.9, 98.3],
    [3, false, 0.03, 5.8, 13.2, 97.4],
    [3, false, 0.1, 5.7, 13.0, 97.4],
  ])(
    '%s, toes alike %s, from %s: an error of %s and a half-width of %s µm',
    (count, alike, first, error, halfWidth, coverage) => {
      const result = series({ series: count, alike, first }, 3);
      expect(result.error * 1e6).toBeGreaterThan(0.8 * error);
      expect(result.error * 1e6).toBeLessThan(1.2 * error);
      expect(result.halfWidth * 1e6).toBeGreaterThan(0.8 * halfWidth);
      expect(result.halfWidth * 1e6).toBeLessThan(1.2 * halfWidth);
      expect(result.coverage * 100).toBeGreaterThan(coverage - 3.5);
    },
  );
});

/** The stretch by the dial alone, a theory that scatters about the truth, and both joined, relative to the truth. */
function drawn(stretch: JoinedWay['stretch']) {
  return (cell: (typeof joinedCases)[number], random: RandomSource) => {
    const way = { series: 1, alike: true, first: 0.03, stretch };
    const { stretch: truth, taken } = joinedReadings(cell, way, random);
    const dial = zeroFromTorque(taken);
    const predicted = truth * (1 + THEORY * random.normal());
    return { truth, taken, dial, predicted, uncertainty: THEORY * predicted };
  };
}

const stressOf = (stress: number, standardUncertainty: number, factor: number) =>
  ready({
    stress,
    standardUncertainty,
    expandedUncertainty: factor * standardUncertainty,
  }) as never;

function joinedMean({ dial, predicted, uncertainty }: ReturnType<ReturnType<typeof drawn>>) {
  const never = { ready: false, waitsFor: [] } as const;
  const factor = tQuantile(0.975, dial.degreesOfFreedom);
  return worksheetBoth(emptyWorksheet, {
    zero: never,
    efficiency: never,
    measured: stressOf(dial.elongation, dial.sdElongation, factor),
    predicted: stressOf(predicted, uncertainty, 2),
  });
}

describe('both together', () => {
  // Percent of the truth, of the weighted mean where the two agree, over 72 cells x 40; here 72 x 4.
  it.each([
    ['short', SHORT, 6.0, 13.1, 96.6],
    ['long', LONG, 3.2, 7.0, 98.3],
  ] as const)(
    'with a %s bar as the weighted mean: %s, ± %s %%',
    (_, stretch, error, halfWidth, coverage) => {
      const draw = drawn(stretch);
      const result = simulated(4, (cell, random) => {
        const one = draw(cell, random);
        const both = joinedMean(one);
        if (!both.ready) return undefined;
        const { stress, low, high } = numbersOf(both);
        return found(1, stress / one.truth, low / one.truth, high / one.truth);
      });
      expect(result.error * 100).toBeLessThan(1.25 * error);
      expect(result.error * 100).toBeGreaterThan(0.75 * error);
      expect(result.halfWidth * 100).toBeLessThan(1.25 * halfWidth);
      expect(result.halfWidth * 100).toBeGreaterThan(0.75 * halfWidth);
      expect(result.coverage * 100).toBeGreaterThan(coverage - 3);
    },
  );

  it('with a short bar inside the fit: 6.1, ± 13.9 %, better than the dial alone', () => {
    const draw = drawn(SHORT);
    const alone = simulated(4, (cell, random) => {
      const { truth, dial } = draw(cell, random);
      const { elongation, elongationLow, elongationHigh } = dial;
      return found(1, elongation / truth, elongationLow / truth, elongationHigh / truth);
    });
    const joined = simulated(4, (cell, random) => {
      const { truth, taken, predicted, uncertainty } = draw(cell, random);
      const known = { elongation: predicted, standardUncertainty: uncertainty };
      const { elongation, elongationLow, elongationHigh } = zeroFromTorque({ ...taken, known });
      return found(1, elongation / truth, elongationLow / truth, elongationHigh / truth);
    });
    expect(joined.error).toBeLessThan(alone.error);
    expect(joined.halfWidth).toBeLessThan(0.8 * alone.halfWidth);
    expect(joined.error * 100).toBeLessThan(1.25 * 6.1);
    expect(joined.halfWidth * 100).toBeLessThan(1.25 * 13.9);
    expect(joined.coverage).toBeGreaterThan(0.95);
  });

  it('is not given where the two disagree', () => {
    const [measured, predicted] = [stressOf(100e6, 5e6, 2), stressOf(130e6, 5e6, 2)];
    const never = { ready: false, waitsFor: [] } as const;
    const both = worksheetBoth(emptyWorksheet, {
      zero: never,
      efficiency: never,
      measured,
      predicted,
    });
    expect(refusalOf(both)).toBe('theyDisagree');
  });
});

/**
 * A weighted mixture of shifted and scaled Student distributions with common degrees of freedom.
 * Units: those of the values.
 * Source: definition.
 */
import { assertPositive } from '../assert.ts';
import { rootBetween } from '../root.ts';
import { tCdf, tQuantile } from '../student.ts';

/** One part of the mixture; the weights of all parts add up to 1. */
export interface MixturePart {
  readonly weight: number;
  readonly centre: number;
  readonly scale: number; // same unit as the centre, > 0
}

/** What the mixture says about its value: mean, standard deviation and a symmetric interval. */
export interface MixtureSummary {
  readonly value: number;
  readonly deviation: number;
  readonly low: number;
  readonly high: number;
}

const NO_WEIGHT = 1e-13; // a part with less moves no quantile in a digit that is kept

/** The value below which lies `probability` of the mixture. @throws RangeError unless 0 < probability < 1 */
export function mixtureQuantile(
  parts: readonly MixturePart[],
  degreesOfFreedom: number,
  probability: number,
): number {
  const t = tQuantile(probability, degreesOfFreedom);
  const felt = parts.filter(({ weight }) => weight > NO_WEIGHT);
  const ends = felt.map(({ centre, scale }) => centre + t * scale);
  // With one part, or equal parts, rounding alone could put both ends on one side of the root.
  const margin = 1e-6 * Math.max(...felt.map(({ scale }) => scale));
  const excess = (value: number): number =>
    felt.reduce(
      (sum, { weight, centre, scale }) =>
        sum + weight * (tCdf((value - centre) / scale, degreesOfFreedom) - probability),
      0,
    );
  return rootBetween(excess, Math.min(...ends) - margin, Math.max(...ends) + margin);
}

/** Mean Σ w·c and standard deviation √Σ w·(s²·ν/(ν − 2) + (c − mean)²). @throws RangeError unless degreesOfFreedom > 2 */
export function mixtureMoments(
  parts: readonly MixturePart[],
  degreesOfFreedom: number,
): Pick<MixtureSummary, 'value' | 'deviation'> {
  assertPositive('degreesOfFreedom less 2', degreesOfFreedom - 2);
  const value = parts.reduce((sum, { weight, centre }) => sum + weight * centre, 0);
  const widening = degreesOfFreedom / (degreesOfFreedom - 2);
  const variance = parts.reduce(
    (sum, { weight, centre, scale }) =>
      sum + weight * (scale * scale * widening + (centre - value) ** 2),
    0,
  );
  return { value, deviation: Math.sqrt(variance) };
}

/**
 * The moments, and the interval that leaves half of 1 − probability on each side.
 * @throws RangeError unless degreesOfFreedom > 2, 0 < probability < 1
 */
export function mixtureSummary(
  parts: readonly MixturePart[],
  degreesOfFreedom: number,
  probability: number,
): MixtureSummary {
  return {
    ...mixtureMoments(parts, degreesOfFreedom),
    low: mixtureQuantile(parts, degreesOfFreedom, (1 - probability) / 2),
    high: mixtureQuantile(parts, degreesOfFreedom, (1 + probability) / 2),
  };
}

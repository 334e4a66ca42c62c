/**
 * What all sorts of toe say together: zeros and elongation with intervals, and the mean toe.
 * Units: m.
 * Source: derived here (mean over models by evidence), tested by simulation.
 */

import {
  type MixturePart,
  type MixtureSummary,
  mixtureMoments,
  mixtureSummary,
} from '../statistics/student-mixture.ts';
import type { EnvelopeFit } from './envelope.ts';

const LONG_TOE = { length: 0.2, height: 10 }; // from these on a toe is felt far up the load

/** The estimates over all sorts of toe. */
export interface EnvelopeEstimate {
  readonly zeros: readonly MixtureSummary[]; // m, of each series
  readonly elongation: MixtureSummary; // m
  readonly degreesOfFreedom: number; // of both
  readonly toe: readonly number[]; // m, one for each reading
  readonly probabilityNoToe: number;
  readonly probabilityLongToe: number;
}

function weightedSum(fits: readonly EnvelopeFit[], pick: (fit: EnvelopeFit) => number): number {
  return fits.reduce((total, fit) => total + fit.weight * pick(fit), 0);
}

/** Mean standard deviation of a reading over all sorts of toe, in m. */
export function meanScatter(fits: readonly EnvelopeFit[]): number {
  return weightedSum(fits, (fit) => fit.scatter);
}

/** Mean elongation at the top load over all sorts of toe, in m. */
export function meanElongation(fits: readonly EnvelopeFit[]): number {
  return weightedSum(fits, (fit) => fit.elongation);
}

const isLong = (fit: EnvelopeFit): boolean =>
  fit.length >= LONG_TOE.length && fit.height >= LONG_TOE.height;

const partsOf = (
  fits: readonly EnvelopeFit[],
  centre: (fit: EnvelopeFit) => number,
  scale: (fit: EnvelopeFit) => number,
): readonly MixturePart[] =>
  fits.map((fit) => ({ weight: fit.weight, centre: centre(fit), scale: scale(fit) }));

const zeroParts = (fits: readonly EnvelopeFit[], series: number) =>
  partsOf(
    fits,
    ({ zeros }) => zeros[series] as number,
    ({ scaleZeros }) => scaleZeros[series] as number,
  );

const elongationParts = (fits: readonly EnvelopeFit[]) =>
  partsOf(
    fits,
    ({ elongation }) => elongation,
    ({ scaleElongation }) => scaleElongation,
  );

/** The same without intervals and toe, which take most of the time. */
export function envelopeMoments(fits: readonly EnvelopeFit[]) {
  const { degreesOfFreedom } = fits[0] as EnvelopeFit;
  return {
    zero: mixtureMoments(zeroParts(fits, 0), degreesOfFreedom),
    elongation: mixtureMoments(elongationParts(fits), degreesOfFreedom),
    degreesOfFreedom,
    probabilityLongToe: weightedSum(fits, (fit) => Number(isLong(fit))),
  };
}

/** Estimates from the fits of `envelopeFits`, the first of which has no toe. */
export function envelopeEstimate(
  fits: readonly EnvelopeFit[],
  probability: number,
): EnvelopeEstimate {
  const { degreesOfFreedom, weight, toe, zeros } = fits[0] as EnvelopeFit;
  const summary = (parts: readonly MixturePart[]) =>
    mixtureSummary(parts, degreesOfFreedom, probability);
  return {
    zeros: zeros.map((_, series) => summary(zeroParts(fits, series))),
    elongation: summary(elongationParts(fits)),
    degreesOfFreedom,
    toe: Array.from(toe, (_, i) => weightedSum(fits, (fit) => fit.toe[i] as number)),
    probabilityNoToe: weight,
    probabilityLongToe: weightedSum(fits, (fit) => Number(isLong(fit))),
  };
}

/**
 * What is known of one input: its value and how it may differ from it.
 * Units: the input's own.
 * Source: JCGM 100:2008 (GUM) 4.3 and 4.4, JCGM 101:2008 6.4, from memory.
 */
import { assertAtLeast, assertFinite, assertPositive } from '../assert.ts';

/** Known by a standard uncertainty: normal, or Student with that scale if degrees of freedom are given. */
export interface InputByUncertainty {
  readonly value: number;
  readonly standardUncertainty: number; // at least 0
  readonly degreesOfFreedom?: number; // > 0; Infinity by default
}

/** Student's distribution with that standard deviation: the tails are already counted in it. */
export interface InputByDeviation {
  readonly value: number;
  readonly standardDeviation: number; // at least 0
  readonly degreesOfFreedom: number; // > 2
}

/** Known by bounds value ± halfWidth: equal chances, most likely in the middle, most near the ends, or one of the two ends. */
export interface InputByBounds {
  readonly value: number;
  readonly halfWidth: number; // at least 0
  readonly shape: 'rectangular' | 'triangular' | 'arcsine' | 'ends';
}

/** Any of the three. */
export type UncertainInput = InputByUncertainty | InputByDeviation | InputByBounds;

/** The inputs of a model by name. */
export type UncertainInputs<Name extends string> = Readonly<Record<Name, UncertainInput>>;

/** A model: one number from the values of its inputs. */
export type InputModel<Name extends string> = (values: Readonly<Record<Name, number>>) => number;

const SQUARED_OVER_VARIANCE = { rectangular: 3, triangular: 6, arcsine: 2, ends: 1 } as const;

/**
 * Standard uncertainty u of an input, in its unit: halfWidth over √3 (rectangular), √6 (triangular)
 * or √2 (arcsine) for bounds, all of it for the two ends. @throws RangeError unless the input is as its type says
 */
export function standardUncertainty(input: UncertainInput): number {
  assertFinite('value', input.value);
  if ('halfWidth' in input) {
    assertAtLeast('halfWidth', input.halfWidth, 0);
    return input.halfWidth / Math.sqrt(SQUARED_OVER_VARIANCE[input.shape]);
  }
  if ('standardDeviation' in input) {
    assertAtLeast('standardDeviation', input.standardDeviation, 0);
    assertPositive('degreesOfFreedom less 2', input.degreesOfFreedom - 2);
    return input.standardDeviation;
  }
  assertAtLeast('standardUncertainty', input.standardUncertainty, 0);
  return input.standardUncertainty;
}

/** Degrees of freedom of an input's uncertainty; Infinity for bounds. @throws RangeError unless above 0 */
export function inputDegreesOfFreedom(input: UncertainInput): number {
  if ('halfWidth' in input) return Number.POSITIVE_INFINITY;
  const { degreesOfFreedom = Number.POSITIVE_INFINITY } = input;
  if (!(degreesOfFreedom === Number.POSITIVE_INFINITY))
    assertPositive('degreesOfFreedom', degreesOfFreedom);
  return degreesOfFreedom;
}

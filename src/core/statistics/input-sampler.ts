/**
 * What to draw for an uncertain input of a model.
 * Units: the input's own.
 * Source: JCGM 101:2008 (GUM Supplement 1), 6.4, from memory.
 */
import type { RandomSource } from '../random.ts';
import {
  inputDegreesOfFreedom,
  standardUncertainty,
  type UncertainInput,
} from './uncertain-input.ts';

/**
 * Draws values of one input: normal or Student about its value, or within its bounds. Student's
 * scale is the standard uncertainty, unless a standard deviation was given.
 * @throws RangeError unless the input is as its type says
 */
export function inputSampler(input: UncertainInput, source: RandomSource): () => number {
  const { value } = input;
  const { uniform, normal, student } = source;
  const deviation = standardUncertainty(input);
  if ('halfWidth' in input) {
    const { halfWidth, shape } = input;
    if (shape === 'rectangular') return () => value + halfWidth * (2 * uniform() - 1);
    if (shape === 'triangular') return () => value + halfWidth * (uniform() - uniform());
    if (shape === 'ends') return () => value + (uniform() < 0.5 ? -halfWidth : halfWidth);
    return () => value + halfWidth * Math.cos(Math.PI * uniform());
  }
  const degrees = inputDegreesOfFreedom(input);
  if (degrees === Number.POSITIVE_INFINITY) return () => value + deviation * normal();
  const widening = 'standardDeviation' in input ? degrees / (degrees - 2) : 1;
  const scale = deviation / Math.sqrt(widening);
  return () => value + scale * student(degrees);
}

/**
 * A result of the worksheet with its uncertainty to first order, largest contributions first.
 * Units: those of the result.
 * Source: JCGM 100:2008 (GUM) 5 and G.4, from memory.
 */
import { coverage } from '../assumptions.ts';
import { propagate } from '../budget.ts';
import type { InputByBounds, InputModel, UncertainInputs } from '../statistics/uncertain-input.ts';

/** One line of a budget: an input's name and its share in the unit of the result, never negative. */
export interface WorksheetContribution {
  readonly name: string;
  readonly contribution: number;
}

/** A value with its budget. */
export interface WorksheetBudget {
  readonly value: number;
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  readonly coverageFactor: number; // for 95 %
  readonly expandedUncertainty: number;
  readonly contributions: readonly WorksheetContribution[]; // largest first
}

/** The model at its inputs' values, with a 95 % budget. @throws RangeError as `propagate` does */
export function worksheetBudget<Name extends string>(
  model: InputModel<Name>,
  inputs: UncertainInputs<Name>,
): WorksheetBudget {
  const { contributions, ...result } = propagate(model, inputs, coverage);
  const lines = contributions.map(({ name, contribution }) => ({ name, contribution }));
  return { ...result, contributions: lines.sort((a, b) => b.contribution - a.contribution) };
}

/** An input that may lie anywhere within value ± halfWidth alike. */
export function rectangular(value: number, halfWidth: number): InputByBounds {
  return { value, halfWidth, shape: 'rectangular' };
}

/** A size, above 0, that may lie anywhere within value ± halfWidth, but never loses more than a quarter of itself. */
export const sizeWithin = (value: number, halfWidth: number): InputByBounds =>
  rectangular(value, Math.min(halfWidth, value / 4));

/** An input that may lie anywhere between two ends alike. */
export const anywhereIn = ({
  low,
  high,
}: {
  readonly low: number;
  readonly high: number;
}): InputByBounds => rectangular((low + high) / 2, (high - low) / 2);

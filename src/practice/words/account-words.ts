/**
 * The account of the lid to the digit that is shown: each line is what it moves the rounded stress, so that what is read adds up.
 * Units: Pa in; text in the reader's units.
 */
import type { Line } from '../../core/bench.ts';
import { formatFixed, THIN_SPACE } from '../../units/format-number.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';
import { fromSi } from '../../units/si-value.ts';

const STEP = { metric: 1, us: 100 } as const; // MPa, psi: no measurement here knows better

/** A stress in steps of what is shown. */
export const inSteps = (stress: number, system: UnitSystem): number =>
  Math.round(fromSi(stress, 'stress', system) / STEP[system]);

const textOf = (steps: number, system: UnitSystem): string =>
  formatFixed(steps * STEP[system], 0) + THIN_SPACE + unitLabel('stress', system);

/** A stress as the lid shows it. */
export const stressText = (stress: number, system: UnitSystem): string =>
  textOf(inSteps(stress, system), system);

/** A line with what it adds, in steps; undefined where nothing comes out. */
export interface AddedLine {
  readonly line: Line;
  readonly steps: number | undefined;
}

/** What each line adds to the rounded truth. */
export function addedUp(
  truth: number,
  lines: readonly Line[],
  system: UnitSystem,
): readonly AddedLine[] {
  let sum = truth;
  return lines.map((line) => {
    if (line.cost === undefined) return { line, steps: undefined };
    const before = inSteps(sum, system);
    sum += line.cost;
    return { line, steps: inSteps(sum, system) - before };
  });
}

/** `+3 MPa`, `−12 MPa`, `0 MPa`. */
export function addedText(steps: number | undefined, system: UnitSystem): string {
  if (steps === undefined) return 'no stress comes out';
  return `${steps > 0 ? '+' : ''}${textOf(steps, system)}`;
}

/**
 * The torques of a series that is planned: evenly spaced, as a wrench can be set to.
 * Units: N·m.
 * Source: the steps, common practice, no source.
 */
import type { UnitSystem } from '../../units/kinds.ts';
import { fromSi, toSi } from '../../units/si-value.ts';

/** What a wrench can be set to, coarse first, in the unit that a system shows. */
const WRENCH_STEPS = [1, 0.5, 0.2, 0.1] as const;

const FINEST = 0.05;

/** Where a series goes, in how many steps. */
export interface SeriesEnds {
  readonly first: number; // N·m
  readonly firstIsTyped: boolean;
  readonly top: number; // N·m
  readonly steps: number;
}

/**
 * So many torques up to the top one. What the reader has typed stays as it is; the others are rounded to a step of a
 * wrench that is well below the distance between them.
 */
export function seriesTorques(
  { first, firstIsTyped, top, steps }: SeriesEnds,
  system: UnitSystem,
): readonly number[] {
  const low = fromSi(first, 'torque', system);
  const apart = (fromSi(top, 'torque', system) - low) / (steps - 1);
  const step = WRENCH_STEPS.find((each) => each <= apart / 2) ?? FINEST;
  return Array.from({ length: steps }, (_, at) => {
    if (at === 0 && firstIsTyped) return first;
    if (at === steps - 1) return top;
    return toSi(step * Math.round((low + apart * at) / step), 'torque', system);
  });
}

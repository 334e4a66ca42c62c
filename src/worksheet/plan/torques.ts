/**
 * The torques or pressures of a series that is planned: evenly spaced, as a wrench can be set to and a gauge be read.
 * Units: N·m, Pa.
 * Source: the steps, common practice, no source.
 */
import type { LoadName } from '../../core/worksheet.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { fromSi, toSi } from '../../units/si-value.ts';

/** What a wrench can be set to and a gauge be read to, coarse first, in the unit that a system shows. */
const STEPS = {
  torque: { metric: [1, 0.5, 0.2, 0.1], us: [1, 0.5, 0.2, 0.1] },
  pressure: { metric: [10, 5, 2, 1, 0.5], us: [100, 50, 20, 10, 5] },
} as const;

const FINEST = { torque: 0.05, pressure: 0.1 } as const;

/** The next load down that a wrench or gauge shows, of those a hundredth or so of it apart. */
export function seriesStepBelow(most: number, system: UnitSystem, load: LoadName): number {
  const amount = fromSi(most, load, system);
  const step = STEPS[load][system].find((each) => each <= amount / 50) ?? FINEST[load];
  return toSi(step * Math.floor(amount / step), load, system);
}

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
  load: LoadName = 'torque',
): readonly number[] {
  const low = fromSi(first, load, system);
  const apart = (fromSi(top, load, system) - low) / (steps - 1);
  const step = STEPS[load][system].find((each) => each <= apart / 2) ?? FINEST[load];
  return Array.from({ length: steps }, (_, at) => {
    if (at === 0 && firstIsTyped) return first;
    if (at === steps - 1) return top;
    return toSi(step * Math.round((low + apart * at) / step), load, system);
  });
}

/**
 * The torques or pressures of a series that is planned: as a wrench can be set to and a gauge be read, in the unit that
 * the wrench or the reader's system shows.
 * Units: N·m, Pa.
 * Source: the steps, common practice, no source.
 */
import type { LoadName } from '../../core/worksheet.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { fromSi, toSi } from '../../units/si-value.ts';
import type { Shown } from '../state/shown.ts';

type LoadKind = LoadName | 'inchTorque';

/** Between what is easily set on a wrench or read off a gauge, coarse first. */
const WRENCH = [10, 5, 2, 1, 0.5, 0.2, 0.1] as const;
const STEPS = {
  torque: { metric: WRENCH, us: WRENCH },
  inchTorque: { metric: WRENCH, us: [100, 50, 20, 10, 5, 2, 1] },
  pressure: { metric: [50, 20, 10, 5, 1, 0.5], us: [500, 200, 100, 50, 10, 5] },
} as const;

/** The finest that some wrench or gauge shows: what is typed to it is kept. */
const FINEST = {
  torque: { metric: 0.1, us: 0.1 },
  inchTorque: { metric: 0.1, us: 1 },
  pressure: { metric: 1, us: 5 },
} as const;

const READABLE = 1 / 15; // of a load: a coarser step would be missed
const CLOSE = 1 / 30; // of a load: rounding up goes no further
const DISTINCT = 0.6; // of the way from each load of a series to the next: a coarser step would crowd them

/** As what a load is shown, and in which units. */
export interface LoadScale {
  readonly kind: LoadKind;
  readonly system: UnitSystem;
}

/** The scale that a sheet's loads are read on. */
export const scaleOf = ({ kindOf, load, system }: Shown): LoadScale => ({
  kind: kindOf(load.name),
  system,
});

/** The coarsest step that is no more than so much; far below what any wrench shows a power of ten. */
const stepUpTo = (most: number, { kind, system }: LoadScale): number =>
  STEPS[kind][system].find((step) => step <= most) ?? 10 ** Math.floor(Math.log10(most));

/** Whether an amount is, but for rounding noise, a multiple of a step. */
function isMultiple(amount: number, step: number): boolean {
  const count = amount / step;
  return Math.abs(count - Math.round(count)) < 1e-6;
}

/** The load itself where a wrench or gauge easily shows it, else the next one down that does; none below all that they show. */
export function readableBelow(most: number, scale: LoadScale): number {
  const amount = fromSi(most, scale.kind, scale.system);
  if (amount < FINEST[scale.kind][scale.system]) return 0;
  const step = stepUpTo(amount * READABLE, scale);
  if (isMultiple(amount, step)) return most;
  return toSi(step * Math.floor(amount / step), scale.kind, scale.system);
}

/** The load itself where a wrench or gauge easily shows it, else the next one up that does. */
export function readableAbove(least: number, scale: LoadScale): number {
  const amount = fromSi(least, scale.kind, scale.system);
  const step = Math.max(stepUpTo(amount * CLOSE, scale), FINEST[scale.kind][scale.system]);
  if (isMultiple(amount, step)) return least;
  return toSi(step * Math.ceil(amount / step), scale.kind, scale.system);
}

/** A load that someone typed: kept where any wrench or gauge shows it. */
export function asTyped(typed: number, scale: LoadScale): number {
  const { kind, system } = scale;
  const isShown = isMultiple(fromSi(typed, kind, system), FINEST[kind][system]);
  return isShown ? typed : readableBelow(typed, scale);
}

/** Where a series goes, in how many steps; `isTyped`: the first was asked for as it is. */
export interface SeriesEnds {
  readonly first: number; // N·m
  readonly isTyped: boolean;
  readonly top: number; // N·m
  readonly steps: number;
}

/** So many torques up to the top one, rounded to a step of a wrench that is well below the distance between them. */
export function seriesTorques(
  { first, isTyped, top, steps }: SeriesEnds,
  scale: LoadScale,
): readonly number[] {
  const { kind, system } = scale;
  const low = fromSi(first, kind, system);
  const apart = (fromSi(top, kind, system) - low) / (steps - 1);
  const step = stepUpTo(apart * DISTINCT, scale);
  return Array.from({ length: steps }, (_, at) => {
    if (at === 0 && isTyped) return asTyped(first, scale);
    if (at === steps - 1) return top;
    return toSi(step * Math.round((low + apart * at) / step), kind, system);
  });
}

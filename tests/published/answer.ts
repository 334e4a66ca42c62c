/**
 * One figure of a case, worked out by the core.
 * Units: the one that the source prints, named beside the figure.
 */
import type { PublishedCase } from './cases.ts';

/** How near ours must come: half a unit of a printed decimal place, or what the case itself allows. */
export type Within =
  | { readonly decimals: number }
  | { readonly absolute: number }
  | { readonly relative: number };

/** Our figure for the number at `path` of what the case expects. */
export interface Answer {
  readonly path: string; // begins with `published` or `recomputed`
  readonly quantity: string;
  readonly unit: string; // '' for a plain number
  readonly ours: number;
  readonly within: Within;
}

/** For each case by its id, our figures. */
export type Answers = Readonly<Record<string, (from: PublishedCase) => readonly Answer[]>>;

/** A figure that the source prints. */
export const printed = (
  key: string,
  quantity: string,
  unit: string,
  ours: number,
  within: Within,
): Answer => ({ path: `published > ${key}`, quantity, unit, ours, within });

/** A figure worked out from the source's own inputs to more digits than it prints, by other code. */
export const recomputed = (
  key: string,
  quantity: string,
  unit: string,
  ours: number,
  relative: number,
): Answer => ({ path: `recomputed > ${key}`, quantity, unit, ours, within: { relative } });

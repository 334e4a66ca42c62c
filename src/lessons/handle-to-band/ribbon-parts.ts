/**
 * Geometry of the ribbon of work: it grows with the work, and under it it is drawn out to a width that is always all of
 * the work, so that shares are read on one scale however little there is.
 * Units: SI in the values; drawing units.
 */

import { evaluated } from '../../models/define-model.ts';
import { formatFixed, THIN_SPACE } from '../../units/format-number.ts';
import { handleToBand } from './model.ts';
import type { State } from './state.ts';
import type { RibbonPlace } from './turn-layout.ts';

/** The parts of the work, and what becomes of each. */
const PARTS = [
  { name: 'bandWork', words: 'in the band' },
  { name: 'frameWork', words: 'frame' },
  { name: 'heat', words: 'heat' },
] as const;

/** One part: its share of the work, and how much of the work comes before it. */
export interface RibbonPart {
  readonly name: (typeof PARTS)[number]['name'];
  readonly words: string;
  readonly share: number;
  readonly before: number;
}

/** All parts of some work, in their order along the ribbon; none before any turn. */
export function ribbonParts({ values }: State): readonly RibbonPart[] {
  let before = 0;
  if (values.work === 0) return [];
  return PARTS.map((part) => {
    const placed = { ...part, share: values[part.name] / values.work, before };
    before += placed.share;
    return placed;
  });
}

/** A share as whole parts of a hundred, the same in the ribbon and in the finding. */
export function percentText(share: number): string {
  return `${formatFixed(100 * share, 0)}${THIN_SPACE}%`;
}

const { turns, friction, frameStiffness } = handleToBand.inputs;

/** The most work that the figure's inputs can ask of the hand. */
const MOST_WORK = evaluated(handleToBand, {
  turns: turns.max,
  friction: friction.max,
  frameStiffness: frameStiffness.max,
}).work;

/** How long the ribbon is: in proportion to the work, and as long as the one drawn out for the most work. */
export function wholeWidth({ values }: State, { width }: RibbonPlace): number {
  return (values.work / MOST_WORK) * width;
}

/** Outlines of a part: on the ribbon as it is, and on the one drawn out. */
export function partPath(
  { share, before }: RibbonPart,
  whole: number,
  { left, width, ribbon, drawnOut }: RibbonPlace,
): string {
  const piece = ([top, foot]: readonly [number, number], all: number) =>
    `M${left + before * all} ${top}h${share * all}V${foot}h${-share * all}Z`;
  return piece(ribbon, whole) + piece(drawnOut, width);
}

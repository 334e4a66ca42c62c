/**
 * Geometry of the ribbon of work: it goes in as wide as the work and spreads to a foot that is always all of it, so that
 * shares are read on one scale however little work there is.
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

/** All parts of some work, in their order along the foot; none before any turn. */
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

/** How wide the work goes in: in proportion to it, and as wide as the foot for the most work. */
export function wholeWidth({ values }: State, { width }: RibbonPlace): number {
  return (values.work / MOST_WORK) * width;
}

/** Outline of a part from where the work goes in to the foot. */
export function flowPath(
  { share, before }: RibbonPart,
  whole: number,
  { left, width, top, spread, foot }: RibbonPlace,
): string {
  const [start, end] = [before, before + share].map((part) => ({
    above: left + part * whole,
    below: left + part * width,
  })) as [Record<'above' | 'below', number>, Record<'above' | 'below', number>];
  return `M${start.above} ${top}L${start.below} ${spread}V${foot}H${end.below}V${spread}L${end.above} ${top}Z`;
}

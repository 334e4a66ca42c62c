/**
 * Geometry of the ribbon of work: each part's share of the whole, where it leaves the whole and where it ends.
 * Units: SI in the values; drawing units.
 */

import { evaluated } from '../../models/define-model.ts';
import { formatFixed, THIN_SPACE } from '../../units/format-number.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';
import { fromSi } from '../../units/si-value.ts';
import { handleToBand } from './model.ts';
import type { State } from './state.ts';
import type { TurnLayout } from './turn-layout.ts';

const PARTS = [
  { name: 'bandWork', words: 'kept in band', kept: true, ink: 'steel' },
  { name: 'frameWork', words: 'kept in frame', kept: true, ink: 'ink' },
  { name: 'threadWork', words: 'heat in thread', kept: false, ink: 'ink' },
  { name: 'collarWork', words: 'heat in bearing', kept: false, ink: 'ink' },
  { name: 'dragWork', words: 'heat at no load', kept: false, ink: 'ink' },
] as const;

type Part = (typeof PARTS)[number];

/** One part's place: where it leaves the whole, and where it ends. */
export interface RibbonPart {
  readonly part: Part;
  readonly share: number;
  readonly start: number;
  readonly end: number;
  readonly thickness: number;
}

const DECIMALS = 2;

/** An energy to the decimals that all of the ribbon's numbers have, so that they add up as they stand. */
export function energyText(energy: number, system: UnitSystem): string {
  const amount = formatFixed(fromSi(energy, 'energy', system), DECIMALS);
  return amount + THIN_SPACE + unitLabel('energy', system);
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

/** How wide the whole is drawn: in proportion to the work, and as wide as its place for the most work. */
export function wholeWidth({ values }: State, { ribbon }: TurnLayout): number {
  return (values.work / MOST_WORK) * ribbon.whole;
}

const LEAST_ROW = 18;
const GAP = 4;

/** Places of all parts from the top down; the ends are parted so that every label has its row. */
export function ribbonParts(state: State, layout: TurnLayout): readonly RibbonPart[] {
  const { values } = state;
  const whole = values.work;
  const width = wholeWidth(state, layout);
  let start = 0;
  let end = layout.ribbon.top;
  return PARTS.map((part) => {
    const share = whole > 0 ? values[part.name] / whole : 0;
    const thickness = share * width;
    const row = Math.max(thickness, LEAST_ROW);
    const placed = { part, share, start, end: end + (row - thickness) / 2, thickness };
    start += thickness;
    end += row + GAP;
    return placed;
  });
}

/** Where the parts leave the whole, and where they end. */
export function ribbonEnds({ ribbon, narrow }: TurnLayout) {
  return narrow
    ? { from: ribbon.left + 16, to: ribbon.label - 18 }
    : { from: ribbon.left + 30, to: ribbon.label - 24 };
}

/** The ribbon's top where the parts are still one, in the middle of where they end. */
export function wholeTop(
  parts: readonly RibbonPart[],
  width: number,
  { ribbon }: TurnLayout,
): number {
  const last = parts.at(-1);
  const bottom = last ? last.end + (last.thickness + Math.max(last.thickness, LEAST_ROW)) / 2 : 0;
  return (ribbon.top + bottom - width) / 2;
}

const TIP = 10;

/** Outline of a part: from the whole to its own end and back, with a point where it leaves as heat. */
export function flowPath(
  { start, end, thickness, part }: RibbonPart,
  top: number,
  layout: TurnLayout,
) {
  const { from, to } = ribbonEnds(layout);
  const bend = (from + to) / 2;
  const [upper, lower] = [top + start, end + thickness];
  const tip = part.kept ? '' : `L${to + TIP} ${end + thickness / 2}`;
  return `M${from} ${upper}C${bend} ${upper} ${bend} ${end} ${to} ${end}${tip}L${to} ${lower}C${bend} ${lower} ${bend} ${upper + thickness} ${from} ${upper + thickness}`;
}

/**
 * What the two looks of a picture show on a dial, as the model has it.
 * Units: m.
 * Source: definition.
 */
import { type Face, markOf, turnOf } from '../../../figures/dial/faces.ts';
import { handsAt } from '../../../figures/dial/hands.ts';
import { pictureOf } from './picture.ts';

/** What is asked: what the dial shows now, or how far it has moved between the two looks. */
export const LOOKS = ['two', 'one'] as const;

/** The kinds of what `readingsOf` gives. */
export const READING_KINDS = {
  markTravel: 'thickness',
  turnTravel: 'thickness',
  shownBefore: 'stretch',
  shownNow: 'stretch',
  higherShown: 'stretch',
  lowerShown: 'stretch',
  markBefore: 'count',
  markNow: 'count',
  moved: 'stretch',
} as const;

/** The readings of a picture with counter and hand, with the hand alone, and how far apart they are. */
export function readingsOf(number: number, face: Face): Record<keyof typeof READING_KINDS, number> {
  const { before, now } = pictureOf(number);
  const mark = markOf(face);
  return {
    markTravel: mark,
    turnTravel: turnOf(face),
    shownBefore: before * mark,
    shownNow: now * mark,
    higherShown: Math.max(before, now) * mark,
    lowerShown: Math.min(before, now) * mark,
    markBefore: handsAt(before).marks,
    markNow: handsAt(now).marks,
    moved: Math.abs(now - before) * mark,
  };
}

/**
 * What the drawing shows, in words: never the reading itself, so that one who hears it has as much to do as one who sees.
 * Units: SI in the view; text in the reader's units.
 */
import { bigHand, smallHand } from '../../figures/dial/positions.ts';
import { marksOf } from '../drawing/BigDial.tsx';
import type { View } from '../state/view.ts';
import { say } from './say.ts';

/** Where both hands are; nothing before there is a dial. */
export function handsInWords(view: View): string {
  const { dial } = view;
  if (!dial) return '';
  const marks = marksOf(view, dial.now.position);
  return `The big hand is ${bigHand(marks)}, the small hand ${smallHand(marks)}.`;
}

/** What there is to do at the dial now. */
export function finding(view: View): string {
  const { dial, bench } = view;
  if (!dial) return 'The band hangs slack, and nothing is clamped to it yet.';
  if (dial.isReleased) return 'The band is let off. Is the hand back where it began?';
  if (dial.now.torque === 0)
    return 'Clamped to the slack band: read the dial, or start to tighten.';
  return `The wrench clicked at ${say(dial.now.torque, 'torque', bench.system)}. What does the dial read?`;
}

/** The drawing for one who does not see it. */
export function description(view: View): string {
  const { dial, bench, mill } = view;
  const rig = 'A band mill from the side, its handle with a torque wrench, and a dial.';
  if (!dial) return `${rig} No clamps are set.`;
  const turns = `The handle has made ${say(dial.now.turns, 'turns', bench.system)}.`;
  const face =
    'The dial has a hundred marks, numbered by tens clockwise from 0 at the top; a small dial counts its turns from 0 to 9.';
  const way = mill.told.runsBackwards ? 'backwards' : 'forwards';
  return `${rig} ${turns} ${face} As the band stretches, the hand runs ${way}. ${handsInWords(view)}`;
}

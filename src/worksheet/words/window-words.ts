/**
 * What is said of the window of tension: its range, which edge binds and why, where the target lies, what to do.
 * Units: SI in, the reader's out.
 */
import { leastMargins, yieldShares } from '../../core/assumptions.ts';
import type { DayResult, WindowResult, Worksheet } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';

type Cause = (WindowResult['lows'] | WindowResult['highs'])[number]['cause'];
type Wishes = Worksheet['demands'];

/** Why each edge is one, in the reader's own wishes. */
const WHY: Readonly<Record<Cause, (wishes: Wishes, shown: Shown) => string>> = {
  straightness: ({ push = Number.NaN, movement = Number.NaN }, { plain }) =>
    `below it a push of ${plain(push, 'force')} moves the teeth more than ${plain(movement, 'thickness')}`,
  grip: (_, { number }) =>
    `below it the band comes near slipping on its wheel, with a margin under ${number(leastMargins.slip)}`,
  yield: (_, { quantity }) =>
    `above it bend and pull together pass ${quantity(yieldShares.shortLife, 'percent')} of the yield strength`,
  life: ({ lifeKept = Number.NaN, lifeExponent = Number.NaN }, { quantity, number }) =>
    `above it the band would last less than ${quantity(lifeKept, 'percent')} as long as at today’s setting, with a life exponent of ${number(lifeExponent)}`,
  bandMaker: () => 'the band’s maker allows no more',
  millMaker: () => 'the mill’s maker allows no more on the wheel',
};

/** What moves each edge. */
const MOVES: Readonly<Record<Cause, string>> = {
  straightness: 'Set the guides closer to lower it: nothing helps more.',
  grip: 'A clean rim or a slower feed lowers it.',
  yield: 'A thinner band or a larger wheel raises it; tension is the small part of that stress.',
  life: 'This compares with today’s setting and is no limit of the steel: set the band tighter, and it moves up too. It cannot say how many hours.',
  bandMaker: 'It comes before anything that is worked out here.',
  millMaker: 'It comes before anything that is worked out here.',
};

const NAME: Readonly<Record<Cause, string>> = {
  straightness: 'Straightness',
  grip: 'Grip',
  yield: 'Bent steel',
  life: 'Life',
  bandMaker: 'Band’s maker',
  millMaker: 'Mill’s maker',
};

const edge = (stress: number, { quantity }: Shown): string =>
  Number.isFinite(stress) ? quantity(Math.max(0, stress), 'stress') : 'out of reach';

/** The window in one line. */
export function windowRange({ low, high, isOpen }: WindowResult, shown: Shown): string {
  if (!isOpen) return 'shut';
  if (low && high) return shown.range(low.stress, high.stress, 'stress');
  if (low) return `from ${edge(low.stress, shown)} up`;
  return high ? `up to ${edge(high.stress, shown)}` : '';
}

/** The edges that bind, each with its reason and what moves it. */
export function bindingEdges(
  { low, high }: WindowResult,
  wishes: Wishes,
  shown: Shown,
): readonly string[] {
  const say = (word: string, { cause, stress }: NonNullable<typeof low | typeof high>) =>
    Number.isFinite(stress)
      ? `${word} ${edge(stress, shown)}: ${WHY[cause](wishes, shown)}. ${MOVES[cause]}`
      : `No tension is enough: so slippery a rim cannot hold that cut. ${MOVES[cause]}`;
  return [...(low ? [say('At least', low)] : []), ...(high ? [say('At most', high)] : [])];
}

/** Every edge by name, lowest first. */
export const allEdges = ({ lows, highs }: WindowResult, shown: Shown): string =>
  [...lows, ...highs]
    .sort((a, b) => a.stress - b.stress)
    .map(({ cause, stress }) => `${NAME[cause].toLowerCase()} ${edge(stress, shown)}`)
    .join(', ');

/** Where a target lies; nothing while there is none. */
export function targetInWindow(
  { low, high, isOpen }: WindowResult,
  target: number | undefined,
): string | undefined {
  if (!isOpen) return 'No tension serves both ends. Move the edge that you can move.';
  if (target === undefined) return undefined;
  if (high && target > high.stress) return 'Your target is above the window.';
  if (low && target < low.stress) return 'Your target is below the window.';
  return low && high ? 'Your target is in the window.' : undefined;
}

/** What a check may show on a warm band, told before the setting that it is for, so that nobody takes it for one. */
export function checkWords(
  { cold, warmLeast, warmMost, warming, isSupportKnown }: DayResult,
  { quantity, range, load }: Shown,
) {
  const least = quantity(warmLeast.torque, load.name);
  const stress = isSupportKnown
    ? quantity(warmLeast.stress, 'stress')
    : range(warmLeast.stress, warmMost.stress, 'stress');
  return {
    warm: isSupportKnown
      ? `A warm band shows about ${least}: leave it.`
      : `A warm band may show as little as ${least}: leave it.`,
    cold: `That is for a band set once, cold, to ${quantity(cold.torque, load.name)}.`,
    why: `With the band ${quantity(warming, 'temperatureDifference')} warmer than frame and wheels it carries ${stress}. ${
      isSupportKnown
        ? 'Frame and springs are as your turns show them.'
        : load.name === 'torque'
          ? 'The range runs from a rigid mill to a soft spring; count turns beside the torque to narrow it.'
          : 'The range runs from oil shut in behind its valve to oil with gas over it, which gives way and keeps its pressure.'
    }`,
  };
}

/** What to do with a check that shows less, before a hand is put to it. */
export const CHECK_CAUTION =
  'Does it show less? If the band is no warmer, look for what slips or sinks. Let off a band that was tightened warm before it cools: it shrinks then, and pulls on wheels and shafts.';

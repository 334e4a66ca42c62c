/**
 * Cautions and warnings that stand beside a result that is given, in the reader's words.
 * Units: SI in, the reader's out.
 */
import type { Shown } from './shown.ts';

type Values = Readonly<Record<string, number>>;
type Sentence = (values: Values, shown: Shown) => string;

const unknown = Number.NaN;

const GUARDS: Readonly<Record<string, Sentence>> = {
  nearYield: ({ share = unknown }, { number }) =>
    `Bent over the wheel the steel reaches ${number(share * 100, 2)} % of its yield strength. Bands do not live long above 60 %.`,
  nearSlip: () => 'Close to slipping on the wheel.',
  outsideCommonPractice: ({ low = unknown, high = unknown }, { range }) =>
    `Outside common practice for small bands, ${range(low, high, 'stress')}.`,
  mayBackOff: ({ threadFriction = unknown, selfLockingFriction = unknown }, { number }) =>
    `May back off with vibration: lock the screw. It holds itself from a friction of ${number(selfLockingFriction, 2)} on, and yours may be as low as ${number(threadFriction, 2)}.`,
  wideUncertainty: ({ share = unknown }, { number }) =>
    `Known to ${number(share * 100, 2)} % only: good enough to repeat, not to compare with a catalogue.`,
  wideInterval: () =>
    'The zero is not well found. More readings in the upper half, or a series that starts at a tenth of the load, would halve the interval.',
  neverStraight: () =>
    'The readings never go straight: look for a loose clamp, the weight of the bar, or a slide that sticks.',
  missedTurn: () =>
    'One reading is nearly a whole turn of the hand off the line. Count its turns again.',
  turnsBelowBand: () =>
    'The turns counted are fewer than the band alone needs: a flat was missed, or the band was not yet rolled round.',
};

/** The codes that have a sentence. */
export const GUARD_CODES = Object.keys(GUARDS);

/** The sentence for a guard or a warning; undefined for one that is told elsewhere, as a refusal. */
export function guardSentence(code: string, values: Values, shown: Shown): string | undefined {
  return GUARDS[code]?.(values, shown);
}

/** The lines of the two budgets, and of what a screw hangs on. */
const LINES: Readonly<Record<string, string>> = {
  stretch: 'Line through the readings',
  drag: 'Torque with no load',
  dial: 'Dial’s own error, one graduation',
  youngsModulus: 'Young’s modulus',
  gaugeLength: 'Gauge length',
  misalignment: 'Bar not quite in line',
  warmthTogether: 'Warmth, band and bar together',
  warmthApart: 'Warmth, band against bar',
  torque: 'Torque wrench, 4 %',
  threadFriction: 'Thread friction',
  collarFriction: 'Collar friction, 30 %',
  meanDiameter: 'Mean diameter of the thread, 1 %',
  efficiency: 'Efficiency',
  bodyWidth: 'Body width',
  thickness: 'Thickness',
  dragTorque: 'Torque with no load',
};

/** What a line of a budget is called. */
export function budgetName(name: string): string {
  return LINES[name] ?? name;
}

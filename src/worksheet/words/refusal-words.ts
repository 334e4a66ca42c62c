/**
 * Why a result cannot be given, in the reader's words; one sentence or two for each code of the core.
 * Units: SI in, the reader's out.
 */

import { yieldShares } from '../../core/assumptions.ts';
import type { Refusal, RefusalCode } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';

/** The names of the numbers that the core gives with a refusal or a guard; each code gives those that its sentence says. */
type ToldValue =
  | 'allowed'
  | 'angle'
  | 'back'
  | 'backwards'
  | 'bodyWidth'
  | 'centreDistance'
  | 'count'
  | 'deflection'
  | 'dragTorque'
  | 'edge'
  | 'efficiency'
  | 'force'
  | 'high'
  | 'highest'
  | 'innerDiameter'
  | 'isAlone'
  | 'lettingDown'
  | 'levels'
  | 'limit'
  | 'loosening'
  | 'low'
  | 'majorDiameter'
  | 'note'
  | 'off'
  | 'outerDiameter'
  | 'pistonDiameter'
  | 'pitch'
  | 'pumping'
  | 'rodDiameter'
  | 'row'
  | 'selfLockingFriction'
  | 'share'
  | 'span'
  | 'strain'
  | 'stress'
  | 'thickness'
  | 'threadFriction'
  | 'tightening'
  | 'topTorque'
  | 'torque'
  | 'turns'
  | 'wheelDiameter'
  | 'widthOverTeeth'
  | 'yieldStrength';

/** The numbers by their names, as a sentence takes them. */
export type ToldValues = Readonly<Record<ToldValue, number>> & { readonly lifeKept?: number };

type Sentence = (values: ToldValues, shown: Shown) => string;

const SENTENCES: Readonly<Record<RefusalCode, Sentence>> = {
  outOfRange: () => 'One of the numbers must be more than 0.',
  bodyWiderThanBand: ({ bodyWidth, widthOverTeeth }, { quantity }) =>
    `The body width (${quantity(bodyWidth, 'length')}) is measured below the gullets; it cannot be more than the width over the teeth (${quantity(widthOverTeeth, 'length')}).`,
  wheelsOverlap: ({ centreDistance }, { quantity }) =>
    `The wheels would overlap: their centers are only ${quantity(centreDistance, 'length')} apart.`,
  rangeBackwards: ({ low, high }, { number }) =>
    `${number(low)} is more than ${number(high)}. Put the smaller number first.`,
  efficiencyAboveOne: ({ high }, { number }) =>
    `An efficiency of ${number(high)} is above 1, and no screw can pass on more than you put in. Write 30 % or 0.3.`,
  frictionJams: ({ high }, { number }) =>
    `With a friction of ${number(high)} this thread would jam. See the usual values beside the box.`,
  collarInsideOut: ({ outerDiameter, innerDiameter }, { quantity }) =>
    `The hole (${quantity(innerDiameter, 'length')}) is not smaller than the washer (${quantity(outerDiameter, 'length')}).`,
  threadUnknown: () =>
    'We cannot read this. Write it like Tr20x4, M24x3, 1-5 Acme or 5/8-11 UNC, or choose “by its own measures”.',
  pitchTooCoarse: ({ pitch, majorDiameter }, { quantity }) =>
    `A pitch of ${quantity(pitch, 'thickness')} does not fit on ${quantity(majorDiameter, 'length')}. Is it in the wrong unit, or threads per inch?`,
  tooFewReadings: ({ levels, count, low, torque }, { number, quantity, load }) =>
    torque
      ? `Take at least three readings above ${quantity(low, load.name)}; there are only ${number(count)}. Or is ${quantity(torque, load.name)} a slip?`
      : `Take more readings: at least six different ${load.name}s above the ${load.noLoad}. So far there are ${number(levels)}.`,
  readingFalls: () =>
    'The dial seems to have moved the other way. If its hand passed zero, fill in the turns, without a minus. Else change which way it runs, or check that nobody let the band off between readings.',
  zeroTooVague: ({ low, high }, { range }) =>
    `The zero may be anywhere from ${range(low, high, 'stretch')}: too uncertain to give a stress. Take more readings in the upper half, and start at about a tenth of the load.`,
  tooMuchStretch: ({ strain }, { number }) =>
    `That is ${number(strain * 100, 2)} % of stretch, and steel does not spring back from that much. Check the whole turns of the hand, the unit of the dial and the gauge length.`,
  belowDrag: ({ torque, dragTorque }, { quantity, load }) =>
    `A ${load.name} of ${quantity(torque, load.name)} only ${load.idle}, which takes ${quantity(dragTorque, load.name)}.`,
  belowZero: () =>
    'These readings are below the zero: the band is not tight there. Check the whole turns of the hand, and that the clamps have not moved since the series.',
  ownEfficiencyAboveOne: ({ efficiency }, { number, load }) =>
    `By these readings the ${load.by} would pass on ${number(efficiency, 3)} times what you put in, which is impossible. Check ${load.suspects}, the lever, and the band’s section.`,
  theyDisagree: () =>
    'Measured and predicted stress differ by more than their uncertainty, so they are not joined. Find out which is wrong first.',
  tunedFromReadings: (_, { load }) =>
    `The ${load.by}’s efficiency was taken from these readings, so there is nothing to join them with.`,
  tooFewStraight: ({ levels }, { number, load }) =>
    `A line needs readings at three ${load.name}s beyond the toe. There are ${number(levels)}.`,
  noLine: () =>
    'The readings scatter too widely for a line. Look for a slip of the pen, or take more readings.',
  rodTooThick: ({ rodDiameter, pistonDiameter }, { quantity }) =>
    `The rod (${quantity(rodDiameter, 'length')}) is not thinner than the piston (${quantity(pistonDiameter, 'length')}).`,
  sealTakesAll: ({ high }, { quantity }) =>
    `A seal that takes ${quantity(high, 'percent')} leaves no force. Write 4 % or 0.04.`,
  noteOutOfReach: ({ note, span }, { quantity }) =>
    `No tight span of ${quantity(span, 'length')} sounds at ${quantity(note, 'frequency')}.`,
  pressTooSoft: ({ force, deflection }, { quantity }) =>
    `Even a slack band takes ${quantity(force, 'force')} to yield by ${quantity(deflection, 'thickness')}. Press less far.`,
  looseningNotLess: ({ tightening, loosening }, { quantity }) =>
    `Loosening (${quantity(loosening, 'torque')}) takes less than tightening (${quantity(tightening, 'torque')}) at the same load.`,
  pressureNotLess: ({ pumping, lettingDown }, { quantity }) =>
    `At the same reading of the dial, letting down (${quantity(lettingDown, 'pressure')}) shows less than pumping (${quantity(pumping, 'pressure')}). Are they the wrong way round?`,
  beyondNumbers: () =>
    'One of the numbers is too large or too small to calculate with. Look for a wrong unit.',
  turnsFall: () =>
    'The turns of the screw, or the dial, do not rise from row to row, so the turns tell nothing.',
  leadTooSteep: ({ angle }, { quantity }) =>
    `The thread would climb at ${quantity(angle, 'angle')}. Is the pitch in the wrong unit, or the number of starts too high?`,
  tooThickForWheel: ({ thickness, wheelDiameter }, { quantity }) =>
    `STOP. ${quantity(thickness, 'thickness')} is too thick for a wheel of ${quantity(wheelDiameter, 'length')}; check the units. No setting is given.`,
  aboveBandLimit: ({ stress, limit }, { quantity }) =>
    `STOP. ${quantity(stress, 'stress')} is above what the band’s maker allows, ${quantity(limit, 'stress')}. No setting is given.`,
  aboveMillLimit: ({ force, limit }, { quantity }) =>
    `STOP. The force on the wheel would be ${quantity(force, 'force')}; the mill’s maker allows ${quantity(limit, 'force')}. No setting is given.`,
  beyondYieldShare: ({ share, yieldStrength }, { number, quantity }) =>
    `STOP. Bent over the wheel, the steel might reach ${number(share * 100, 3)} % of its yield strength of ${quantity(yieldStrength, 'stress')}, uncertainty included. No setting is given above ${number(yieldShares.stop * 100)} %.`,
};

/** The sentence for a refusal. */
export function refusalSentence({ code, values }: Refusal, shown: Shown): string {
  return SENTENCES[code](values as ToldValues, shown);
}

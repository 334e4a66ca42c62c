/**
 * Why a result cannot be given, in the reader's words; one sentence or two for each code of the core.
 * Units: SI in, the reader's out.
 */

import { yieldShares } from '../../core/assumptions.ts';
import type { Refusal, RefusalCode } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';

type Sentence = (values: Readonly<Record<string, number>>, shown: Shown) => string;

const unknown = Number.NaN;

const SENTENCES: Readonly<Record<RefusalCode, Sentence>> = {
  outOfRange: () => 'One of the numbers must be more than 0.',
  bodyWiderThanBand: ({ bodyWidth = unknown, widthOverTeeth = unknown }, { quantity }) =>
    `The body width (${quantity(bodyWidth, 'length')}) is measured below the gullets; it cannot exceed the width over the teeth (${quantity(widthOverTeeth, 'length')}).`,
  wheelsOverlap: ({ centreDistance = unknown }, { quantity }) =>
    `The wheels would overlap: their centres are only ${quantity(centreDistance, 'length')} apart.`,
  rangeBackwards: ({ low = unknown, high = unknown }, { number }) =>
    `The range runs backwards: ${number(low)} is more than ${number(high)}. Put the smaller number first.`,
  efficiencyAboveOne: ({ high = unknown }, { number }) =>
    `A screw cannot give back more than is put in: an efficiency of ${number(high)} is above 1. Write 30 % or 0.3.`,
  frictionJams: ({ high = unknown }, { number }) =>
    `With a friction of ${number(high)} this thread would jam. Look at the usual values beside the box.`,
  collarInsideOut: ({ outerDiameter = unknown, innerDiameter = unknown }, { quantity }) =>
    `The hole (${quantity(innerDiameter, 'length')}) is not smaller than the washer (${quantity(outerDiameter, 'length')}).`,
  threadUnknown: () =>
    'No such thread is listed. Write it like Tr20x4, M24x3, 1-5 Acme or 5/8-11 UNC, or choose “by its own measures”.',
  pitchTooCoarse: ({ pitch = unknown, majorDiameter = unknown }, { quantity }) =>
    `A pitch of ${quantity(pitch, 'thickness')} does not fit on ${quantity(majorDiameter, 'length')}. Is it in the wrong unit, or threads per inch?`,
  tooFewReadings: ({ levels = unknown }, { number }) =>
    `Take more readings: at least six different torques above the no-load torque, three of them in the upper half. So far there are ${number(levels)} so far.`,
  readingFalls: () =>
    'The dial moved the other way. Change how the dial runs, or see whether the band was slackened between readings.',
  zeroTooVague: ({ low = unknown, high = unknown }, { range }) =>
    `The zero may lie anywhere from ${range(low, high, 'stretch')}: too vague to give a stress. Take more readings in the upper half, and start at about a tenth of the load.`,
  tooMuchStretch: ({ strain = unknown }, { number }) =>
    `That is ${number(strain * 100, 2)} % of stretch, more than the steel can spring back from. Check the whole turns of the hand, the unit of the dial and the gauge length.`,
  belowDrag: ({ torque = unknown, dragTorque = unknown }, { quantity }) =>
    `A torque of ${quantity(torque, 'torque')} only turns the empty screw, which takes ${quantity(dragTorque, 'torque')}.`,
  belowZero: () =>
    'These readings lie below the zero: the band is not tight there. Check the whole turns, and that the clamps were not moved since the series.',
  ownEfficiencyAboveOne: ({ efficiency = unknown }, { number }) =>
    `By these readings the screw would give back ${number(efficiency, 3)} of what is put in, which cannot be. Check thread and starts, the lever, and the band’s section.`,
  tooFewStraight: ({ levels = unknown }, { number }) =>
    `A line needs three torques beyond the toe; there are ${number(levels)}.`,
  noLine: () =>
    'The readings scatter so widely that no line can be laid through them. Look for a slip, or take more of them.',
  beyondNumbers: () => 'Something typed is too far out to reckon with. Look for a slip of unit.',
  turnsFall: () =>
    'The turns of the screw, or the dial, do not rise from row to row, so the turns say nothing.',
  leadTooSteep: ({ angle = unknown }, { quantity }) =>
    `The thread would climb at ${quantity(angle, 'angle')}. Is the pitch in the wrong unit, or are the starts too many?`,
  tooThickForWheel: ({ thickness = unknown, wheelDiameter = unknown }, { quantity }) =>
    `STOP. ${quantity(thickness, 'thickness')} is too thick for a wheel of ${quantity(wheelDiameter, 'length')}; check the units. No setting is given.`,
  aboveBandLimit: ({ stress = unknown, limit = unknown }, { quantity }) =>
    `STOP. ${quantity(stress, 'stress')} is above what the band’s maker allows, ${quantity(limit, 'stress')}. No setting is given.`,
  aboveMillLimit: ({ force = unknown, limit = unknown }, { quantity }) =>
    `STOP. The wheel would be pulled with ${quantity(force, 'force')}; the mill’s maker allows ${quantity(limit, 'force')}. No setting is given.`,
  beyondYieldShare: ({ share = unknown, yieldStrength = unknown }, { number, quantity }) =>
    `STOP. Bent over the wheel, the steel might reach, uncertainty included, ${number(share * 100, 2)} % of its yield strength of ${quantity(yieldStrength, 'stress')}. No setting is given beyond ${number(yieldShares.stop * 100)} %.`,
};

/** The sentence for a refusal. */
export function refusalSentence({ code, values }: Refusal, shown: Shown): string {
  return SENTENCES[code](values, shown);
}

/**
 * How the quantities of the model `theory-meets-measurement` are named.
 * Units: none.
 * Source: definition.
 */
import { hand, type ModelWords, plain, steel } from '../../models/words.ts';
import type { theoryMeetsMeasurement } from './model.ts';
import { REASON_WORDS } from './reasons.ts';

/** The words of every input and output. */
export const words: ModelWords<typeof theoryMeetsMeasurement> = {
  inputs: {
    efficiency: hand('efficiency of the screw', 'e'),
    shown: { label: 'show', options: { line: 'your line', fit: 'the fit' } },
    assumedDrag: hand('no-load torque taken as known', 'M_0'),
    sheet: {
      label: 'sheet',
      options: { first: 'sheet 1', second: 'sheet 2', third: 'sheet 3', fourth: 'sheet 4' },
    },
    reason: { label: 'suppose', options: REASON_WORDS },
  },
  outputs: {
    topTorque: plain('highest torque of the series', 'M'),
    drag: plain('no-load torque, measured with the band slack', 'M_0'),
    lead: plain('lead of the screw', 'l'),
    area: plain('load-bearing section', 'A'),
    frictionLow: plain('lowest thread friction assumed'),
    frictionHigh: plain('highest thread friction assumed'),
    dryFrictionLow: plain('lowest friction of a dry thread'),
    dryFrictionHigh: plain('highest friction of a dry thread'),
    lineStress: steel('stress on your line', '\\sigma'),
    lineSlope: steel('slope of your line', 'b'),
    lineExpanded: plain('uncertainty of your line, 95 %', 'U'),
    lineMissed: plain('error bars that your line misses'),
    lineAgreement: plain('agreement number of your line', 'E_n'),
    predictedEfficiency: plain('efficiency predicted'),
    predictedEfficiencyLow: plain('its low end'),
    predictedEfficiencyHigh: plain('its high end'),
    predictedStress: plain('predicted stress', '\\sigma_p'),
    predictedExpanded: plain('uncertainty of the prediction, 95 %', 'U_p'),
    predictedLow: plain('its low end'),
    predictedHigh: plain('its high end'),
    agreement: plain('agreement number', 'E_n'),
    measuredStress: steel('measured stress', '\\sigma_m'),
    measuredExpanded: steel('uncertainty of the measured stress, 95 %', 'U_m'),
    measuredLow: steel('its low end'),
    measuredHigh: steel('its high end'),
    stretch: steel('stretch at the highest torque'),
    gaugeLength: plain('gauge length'),
    youngsModulus: plain('Young’s modulus assumed'),
    zeroBelow: plain('how far the zero is below the first reading'),
    zeroBelowLeast: plain('its low end'),
    zeroBelowMost: plain('its high end'),
    slope: steel('stress for each unit of torque', 'b'),
    ownEfficiency: plain('the screw’s own efficiency', 'e'),
    ownExpanded: plain('its uncertainty, 95 %'),
    ownLow: plain('its low end'),
    ownHigh: plain('its high end'),
    ownShare: plain('its standard uncertainty as a share'),
    yorkSlope: steel('slope of the line through both errors', 'b_{xy}'),
    yorkShare: plain('standard uncertainty of that slope as a share'),
    yorkIntercept: steel('stress of the line through both errors at zero torque', 'a'),
    yorkScatter: plain('scatter found over scatter expected, squared'),
    readingsUsed: plain('readings in the line'),
    readingsTaken: plain('readings taken'),
    zeroErrorStress: plain('zero error as a stress', 'z'),
    zeroErrorStretch: plain('zero error on the dial'),
    zeroBelowByLine: plain('how far the zero is below the first reading, by the line'),
    impliedDrag: plain('no-load torque if the first reading were the zero'),
    targetStress: steel('target stress'),
    settingTorque: plain('torque for the target stress'),
  },
};

/**
 * The names, kinds and symbols of what the model `theory-meets-measurement` gives.
 * Units: SI.
 * Source: definition.
 */

import type { Ink, OutputSpec } from '../../models/define-model.ts';
import type { QuantityKind } from '../../units/kinds.ts';

const written =
  (ink: Ink) =>
  (kind: QuantityKind, label: string, symbol = ''): OutputSpec => ({ kind, symbol, label, ink });

const steel = written('steel');
const plain = written('plain');

/** Every output of the model. */
export const OUTPUTS = {
  topTorque: plain('torque', 'highest torque of the series', 'M'),
  drag: plain('torque', 'drag, measured with the band slack', 'M_d'),
  lead: plain('lengthPerTurn', 'lead of the screw', 'l'),
  area: plain('area', 'load-bearing section', 'A'),
  frictionLow: plain('ratio', 'lowest thread friction believed'),
  frictionHigh: plain('ratio', 'highest thread friction believed'),
  dryFrictionLow: plain('ratio', 'lowest friction of a dry thread'),
  dryFrictionHigh: plain('ratio', 'highest friction of a dry thread'),
  lineStress: steel('stress', 'stress on your line', '\\sigma'),
  lineSlope: steel('stressPerTorque', 'slope of your line', 'b'),
  lineExpanded: plain('stress', 'what your line may be off by, 95 %', 'U'),
  lineMissed: plain('count', 'error bars that your line misses'),
  lineAgreement: plain('ratio', 'agreement number of your line', 'E_n'),
  predictedEfficiency: plain('percent', 'efficiency predicted'),
  predictedEfficiencyLow: plain('percent', 'its low end'),
  predictedEfficiencyHigh: plain('percent', 'its high end'),
  predictedStress: plain('stress', 'predicted stress', '\\sigma_p'),
  predictedExpanded: plain('stress', 'what that may be off by', 'U_p'),
  predictedLow: plain('stress', 'its low end'),
  predictedHigh: plain('stress', 'its high end'),
  agreement: plain('ratio', 'agreement number', 'E_n'),
  measuredStress: steel('stress', 'measured stress', '\\sigma_m'),
  measuredExpanded: steel('stress', 'what the measured stress may be off by, 95 %', 'U_m'),
  measuredLow: steel('stress', 'its low end'),
  measuredHigh: steel('stress', 'its high end'),
  stretch: steel('stretch', 'stretch at the highest torque'),
  gaugeLength: plain('length', 'gauge length'),
  youngsModulus: plain('modulus', 'Young’s modulus taken'),
  zeroBelow: plain('stretch', 'how far no tension lies below the first reading'),
  zeroBelowLeast: plain('stretch', 'its low end'),
  zeroBelowMost: plain('stretch', 'its high end'),
  slope: steel('stressPerTorque', 'stress for each unit of torque', 'b'),
  ownEfficiency: plain('percent', 'the screw’s own efficiency', 'e'),
  ownExpanded: plain('percent', 'what that may be off by'),
  ownLow: plain('percent', 'its low end'),
  ownHigh: plain('percent', 'its high end'),
  ownShare: plain('percent', 'its standard uncertainty as a share'),
  yorkSlope: steel('stressPerTorque', 'slope of the line through both errors', 'b_{xy}'),
  yorkShare: plain('percent', 'that uncertainty as a share'),
  yorkIntercept: steel('stress', 'where the line through both errors meets no torque', 'a'),
  yorkScatter: plain('ratio', 'scatter found over scatter expected, squared'),
  readingsUsed: plain('count', 'readings in the line'),
  readingsTaken: plain('count', 'readings taken'),
  zeroErrorStress: plain('stress', 'zero error as a stress', 'z'),
  zeroErrorStretch: plain('stretch', 'zero error on the dial'),
  zeroBelowByLine: plain('stretch', 'how far no tension lies below the first reading'),
  impliedDrag: plain('torque', 'drag if the first reading were the zero'),
  targetStress: steel('stress', 'stress wanted'),
  settingTorque: plain('torque', 'torque for the stress wanted'),
} as const satisfies Readonly<Record<string, OutputSpec>>;

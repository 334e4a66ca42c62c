/**
 * What the mill at Ottersleigh comes to, as plain data: worked out at build, so that the page need not carry the code.
 * Units: SI.
 * Source: the modules beside it, by their own sources; core/agreement (`agreement-standards`).
 */
import { agreementNumber } from '../../core/agreement.ts';
import { torqueForStress } from '../../core/screw.ts';
import { bandArea, OTTERSLEIGH, screwWith } from '../../models/mills/ottersleigh.ts';
import { TOP_TORQUE } from '../../models/mills/ottersleigh-series.ts';
import {
  assumedModulus,
  measuredStress,
  ownEfficiency,
  stressPerStretch as perStretch,
  seriesFit,
} from './measured.ts';
import { predictedCurve, predictedStress } from './predicted.ts';
import { DRY_THREAD } from './sheets.ts';

const { dragTorque, threadFriction, targetStress } = OTTERSLEIGH;
const believed = { starts: 1, threadFriction };
const theory = predictedStress(believed, TOP_TORQUE);
const measured = measuredStress();
const own = ownEfficiency(measured);
const { zero, line } = seriesFit;
const { lead } = screwWith(threadFriction.low);

/** Stress in Pa for each metre that the dial moves. */
export const stressPerStretch = perStretch;

/** Where no tension is, as a stress counted from the first reading. */
export const zeroStress = perStretch * zero.zero;

/** The readings as stresses counted from the first reading. */
export const readings = seriesFit.readings;

/** The prediction over torque, as far as the plots go. */
export const theoryCurve = predictedCurve(believed, 16);

/** What the model of the lesson gives whatever the reader sets, by the names of its outputs. */
export const known = {
  topTorque: TOP_TORQUE,
  drag: dragTorque,
  lead,
  area: bandArea,
  frictionLow: threadFriction.low,
  frictionHigh: threadFriction.high,
  dryFrictionLow: DRY_THREAD.low,
  dryFrictionHigh: DRY_THREAD.high,
  predictedEfficiency: theory.efficiency,
  predictedEfficiencyLow: theory.efficiencyLow,
  predictedEfficiencyHigh: theory.efficiencyHigh,
  predictedStress: theory.stress,
  predictedExpanded: theory.expanded,
  predictedLow: theory.stress - theory.expanded,
  predictedHigh: theory.stress + theory.expanded,
  agreement: agreementNumber(
    { value: measured.stress, expanded: measured.expanded },
    { value: theory.stress, expanded: theory.expanded },
  ),
  measuredStress: measured.stress,
  measuredExpanded: measured.expanded,
  measuredLow: measured.stress - measured.expanded,
  measuredHigh: measured.stress + measured.expanded,
  gaugeLength: OTTERSLEIGH.gaugeLength,
  youngsModulus: assumedModulus,
  stretch: zero.elongation,
  zeroBelow: -zero.zero,
  zeroBelowLeast: -zero.high,
  zeroBelowMost: -zero.low,
  slope: own.slope,
  ownEfficiency: own.value,
  ownExpanded: own.expanded,
  ownLow: own.value - own.expanded,
  ownHigh: own.value + own.expanded,
  ownShare: own.standard / own.value,
  targetStress,
  settingTorque: torqueForStress(
    { lead, efficiency: own.value, dragTorque },
    { area: bandArea },
    targetStress,
  ),
  yorkSlope: line.slope,
  yorkShare: line.sdSlope / line.slope,
  yorkIntercept: line.intercept,
  yorkScatter: line.scatter,
  readingsUsed: line.readingsUsed,
  readingsTaken: readings.length,
  impliedDrag: -line.intercept / line.slope,
};

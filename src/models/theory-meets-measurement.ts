/**
 * Theory meets measurement: the predicted stress over torque beside the readings of one mill, a line of the reader's
 * own efficiency, the fit, the intercept with its two meanings, and four sheets with a reason to be found.
 * Units: SI.
 * Source: core/tensioner, core/agreement (`agreement-standards`), core/line (`york-2004`); the mill is invented.
 */
import { agreementNumber } from '../core/agreement.ts';
import { stressFromTorque, torqueForStress } from '../core/tensioner.ts';
import { defineModel, type InputSpec } from './define-model.ts';
import { bandArea, OTTERSLEIGH, screwWith, TOP_TORQUE } from './ottersleigh.ts';
import {
  BAR_REACH,
  ownEfficiency,
  seriesFit,
  stressPerStretch,
  topStress,
} from './ottersleigh-measured.ts';
import { predictedStress } from './ottersleigh-predicted.ts';
import { REASON_WORDS, SHEET_NAMES, sheetResult } from './ottersleigh-sheets.ts';
import { OUTPUTS } from './theory-meets-measurement-outputs.ts';

const { threadFriction, dragTorque, targetStress } = OTTERSLEIGH;
const drag = dragTorque.value;
const { lead } = screwWith(threadFriction.low);
const band = { area: bandArea };

/** The prediction at the highest torque, from the friction that is believed. */
export const theory = predictedStress({ starts: 1, threadFriction }, TOP_TORQUE);

const tensionerOf = (efficiency: number) => ({ lead, efficiency, dragTorque: drag });

function choice(label: string, options: readonly string[]): InputSpec {
  const step = { metric: 1, us: 1 };
  return {
    kind: 'count',
    symbol: '',
    label,
    default: 0,
    min: 0,
    max: options.length - 1,
    step,
    options,
  };
}

/** How many error bars of the filled readings (95 %, both errors together) a line through the drag misses. */
function missedBy(slope: number): number {
  const { zero, readings } = seriesFit();
  const missed = readings.filter(({ torque, stress, sdTorque, sdStress, inToe }) => {
    const miss = stress - stressPerStretch * zero.zero - slope * (torque - drag);
    return !inToe && Math.abs(miss) > BAR_REACH * Math.hypot(sdStress, slope * sdTorque);
  });
  return missed.length;
}

/** The measured stress against another with its U. */
function agreementWith(stress: number, expanded: number): number {
  const measured = topStress();
  return agreementNumber(
    { value: measured.stress, expanded: measured.expanded },
    { value: stress, expanded },
  );
}

function lineValues(efficiency: number) {
  const lineStress = stressFromTorque(tensionerOf(efficiency), band, TOP_TORQUE);
  const lineSlope = lineStress / (TOP_TORQUE - drag);
  const lineExpanded = (lineStress * theory.expanded) / theory.stress;
  return {
    lineStress,
    lineSlope,
    lineExpanded,
    lineMissed: missedBy(lineSlope),
    lineAgreement: agreementWith(lineStress, lineExpanded),
  };
}

function theoryValues() {
  const { stress, expanded, efficiency, efficiencyLow, efficiencyHigh } = theory;
  return {
    topTorque: TOP_TORQUE,
    drag,
    lead,
    area: bandArea,
    frictionLow: threadFriction.low,
    frictionHigh: threadFriction.high,
    predictedEfficiency: efficiency,
    predictedEfficiencyLow: efficiencyLow,
    predictedEfficiencyHigh: efficiencyHigh,
    predictedStress: stress,
    predictedExpanded: expanded,
    predictedLow: stress - expanded,
    predictedHigh: stress + expanded,
    agreement: agreementWith(stress, expanded),
  };
}

function measuredValues() {
  const { zero } = seriesFit();
  const { stress, expanded } = topStress();
  const own = ownEfficiency();
  return {
    measuredStress: stress,
    measuredExpanded: expanded,
    measuredLow: stress - expanded,
    measuredHigh: stress + expanded,
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
    settingTorque: torqueForStress(tensionerOf(own.value), band, targetStress),
  };
}

function yorkValues(assumedDrag: number) {
  const { line, readings } = seriesFit();
  const zeroErrorStress = line.intercept + line.slope * assumedDrag;
  return {
    yorkSlope: line.slope,
    yorkSdSlope: line.sdSlope,
    yorkShare: line.sdSlope / line.slope,
    yorkIntercept: line.intercept,
    yorkScatter: line.scatter,
    readingsUsed: line.readingsUsed,
    readingsTaken: readings.length,
    zeroErrorStress,
    zeroErrorStretch: zeroErrorStress / stressPerStretch,
    zeroBelowByLine: -zeroErrorStress / stressPerStretch,
    impliedDrag: -line.intercept / line.slope,
  };
}

function sheetValues(sheet: number, reason: number) {
  const found = sheetResult(sheet, reason);
  return {
    sheetTopTorque: found.topTorque,
    sheetLoosening: found.looseningTorque,
    sheetEfficiency: found.efficiencyByLoosening,
    sheetFactor: found.predicted.stress / found.measured.stress,
    sheetAgreement: found.agreement,
  };
}

/** Efficiency to line and agreement; drag to zero error; sheet and reason to what fits. */
export const theoryMeetsMeasurement = defineModel({
  name: 'theory-meets-measurement',
  inputs: {
    efficiency: {
      kind: 'percent',
      symbol: 'e',
      label: 'efficiency of the screw',
      default: theory.efficiency,
      min: 0.15,
      max: 0.42,
      step: { metric: 0.002, us: 0.002 },
    },
    shown: choice('beside the readings', ['your line', 'the fit']),
    assumedDrag: {
      kind: 'torque',
      symbol: 'M_d',
      label: 'drag taken as known',
      default: drag,
      min: 0,
      max: 5,
      step: { metric: 0.05, us: 0.06779 },
    },
    sheet: choice('look at', SHEET_NAMES),
    reason: choice('suppose that', REASON_WORDS),
  },
  outputs: OUTPUTS,
  evaluate: ({ efficiency, assumedDrag, sheet, reason }) => ({
    ...theoryValues(),
    ...lineValues(efficiency),
    ...measuredValues(),
    ...yorkValues(assumedDrag),
    ...sheetValues(sheet, reason),
  }),
});

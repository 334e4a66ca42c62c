/**
 * What the loading series at Ottersleigh comes to: zero and stretch from all readings, the stress at the top torque
 * with its uncertainty, the line through both errors, the screw's own efficiency.
 * Units: SI.
 * Source: zero.ts (envelope method), line.ts (`york-2004`), first-order budget after `gum`; half-widths of E, gauge
 * length, tilt and warmth: common practice, no source (dial: `dial-standards`, wrench: `iso-6789`, from memory).
 */

import { misalignmentAllowance } from '../../core/elasticity.ts';
import type { FittedLineBothErrors } from '../../core/line.ts';
import { fitLineBothErrors } from '../../core/line.ts';
import { efficiencyFromSlope } from '../../core/screw.ts';
import {
  areaDoubt,
  readTorqueDoubt,
  rectangular,
  stressOfStretch,
  toeShare,
  worksheetBudget,
  wrenchSpread,
} from '../../core/worksheet.ts';
import { type ZeroFromTorque, zeroFromTorque } from '../../core/zero.ts';
import { bandArea, OTTERSLEIGH, screwWith } from '../../models/mills/ottersleigh.ts';
import {
  DIAL,
  DRAG_DOUBT,
  LOADING_SERIES,
  TOP_TORQUE,
} from '../../models/mills/ottersleigh-series.ts';

const YOUNGS_MODULUS = rectangular(OTTERSLEIGH.youngsModulus, 5e9);
const GAUGE_LENGTH = rectangular(OTTERSLEIGH.gaugeLength, 1e-3);
const LARGEST_UNNOTICED_TILT = (3 * Math.PI) / 180;
const WARMTH_APART = 11.5e-6; // strain: band and bar of steel, 1 K apart
const COVERAGE = 2;

const tilt = misalignmentAllowance(LARGEST_UNNOTICED_TILT, 0.3);

/** Young's modulus E taken for the band, Pa. */
export const assumedModulus = YOUNGS_MODULUS.value;

/** Stress in Pa for each metre that the dial moves, E/(L₀·fₐ). */
export const stressPerStretch = YOUNGS_MODULUS.value / (GAUGE_LENGTH.value * tilt.factor);

/** One reading of the series, as a stress counted from the first reading. */
export interface StressReading {
  readonly torque: number; // N·m
  readonly stress: number; // Pa
  readonly sdTorque: number; // N·m
  readonly sdStress: number; // Pa
  readonly inToe: boolean; // not in the line
}

/** A stress with its uncertainty, Pa. */
export interface UncertainStress {
  readonly stress: number;
  readonly standard: number;
  readonly expanded: number; // 95 %
}

/** What all readings together say. */
export interface SeriesFit {
  readonly zero: ZeroFromTorque;
  readonly readings: readonly StressReading[];
  readonly line: FittedLineBothErrors & { readonly readingsUsed: number; readonly scatter: number };
}

function stressReadings(toe: readonly number[]): readonly StressReading[] {
  const { repeatability } = DIAL;
  return LOADING_SERIES.torques.map((torque, i) => ({
    torque,
    stress: stressPerStretch * (LOADING_SERIES.readings[i] ?? 0),
    sdTorque: readTorqueDoubt(torque),
    sdStress: stressPerStretch * repeatability,
    inToe: Math.abs(toe[i] ?? 0) >= toeShare * repeatability,
  }));
}

function fitSeries(): SeriesFit {
  const { dragTorque } = OTTERSLEIGH;
  const { repeatability } = DIAL;
  const zero = zeroFromTorque({ ...LOADING_SERIES, dragTorque, repeatability });
  const readings = stressReadings(zero.toe);
  const used = readings.filter(({ inToe }) => !inToe);
  const line = fitLineBothErrors({
    x: used.map(({ torque }) => torque),
    y: used.map(({ stress }) => stress),
    sdX: used.map(({ sdTorque }) => sdTorque),
    sdY: used.map(({ sdStress }) => sdStress),
  });
  const scatter = line.weightedResidualSum / (used.length - 2);
  return { zero, readings, line: { ...line, readingsUsed: used.length, scatter } };
}

/** Zero, readings and York's line of the series. */
export const seriesFit = fitSeries();

/** The stress at the top torque; `torqueTimes` stretches the torques above the drag, the dial's readings stay. */
export function measuredStress(torqueTimes = 1): UncertainStress {
  const { elongation, sdElongation, degreesOfFreedom } = seriesFit.zero;
  const range = torqueTimes * (TOP_TORQUE - OTTERSLEIGH.dragTorque);
  const budget = worksheetBudget(stressOfStretch, {
    youngsModulus: YOUNGS_MODULUS,
    gaugeLength: GAUGE_LENGTH,
    misalignment: rectangular(tilt.factor, tilt.halfWidth),
    dial: rectangular(0, DIAL.graduation),
    warmthTogether: rectangular(0, 0), // a steel bar grows as the band does
    warmthApart: rectangular(0, WARMTH_APART),
    stretch: { value: elongation, standardDeviation: sdElongation, degreesOfFreedom },
    drag: { value: 0, standardUncertainty: (elongation * DRAG_DOUBT) / range },
  });
  return {
    stress: budget.value,
    standard: budget.standardUncertainty,
    expanded: budget.expandedUncertainty,
  };
}

/** The screw's own efficiency from the stress for each unit of torque above the drag, with k = 2. */
export function ownEfficiency({ stress, standard }: UncertainStress) {
  const { bodyWidth, thickness, dragTorque, threadFriction } = OTTERSLEIGH;
  const slope = stress / (TOP_TORQUE - dragTorque);
  const { lead } = screwWith(threadFriction.low);
  const value = efficiencyFromSlope({ slope, lead, area: bandArea });
  const doubts = [
    standard / stress,
    areaDoubt({ bodyWidth, thickness }),
    wrenchSpread / Math.sqrt(3),
  ];
  const own = value * Math.hypot(...doubts);
  return { slope, value, standard: own, expanded: COVERAGE * own };
}

/**
 * What the screw at Ottersleigh should give, before any reading is looked at, over the friction that is believed.
 * Units: SI.
 * Source: σ = π·e·(M − M_d)/(l·A) (core/tensioner), exact screw (core/screw), first-order budget after `gum`;
 * spreads of collar and pitch diameter: common practice, no source; wrench: `iso-6789`, from memory.
 */
import { efficiency, stressFromTorque } from '../../core/screw.ts';
import { rectangular, sectionSpread, worksheetBudget, wrenchSpread } from '../../core/worksheet.ts';
import { OTTERSLEIGH, screwWith } from '../../models/mills/ottersleigh.ts';
import { DRAG_DOUBT } from '../../models/mills/ottersleigh-series.ts';
import type { UncertainStress } from './measured.ts';

const COLLAR_SPREAD = 0.3;
const DIAMETER_SPREAD = 0.01;
const COVERAGE = 2;
const CURVE_STEPS = 6;

/** What is believed of the screw. */
export interface BelievedScrew {
  readonly starts: number;
  readonly threadFriction: { readonly low: number; readonly high: number };
}

/** A prediction, with the efficiencies at the middle and the ends of the friction believed. */
export interface Prediction extends UncertainStress {
  readonly efficiency: number;
  readonly efficiencyLow: number;
  readonly efficiencyHigh: number;
  readonly lead: number; // m
}

const middleOf = ({ low, high }: BelievedScrew['threadFriction']) => (low + high) / 2;

/** The stress predicted at a torque on the wrench, N·m, above the drag. */
export function predictedStress(
  { starts, threadFriction }: BelievedScrew,
  torque: number,
): Prediction {
  const { bodyWidth, thickness, dragTorque } = OTTERSLEIGH;
  const friction = middleOf(threadFriction);
  const screw = screwWith(friction, starts);
  const { collarFriction, meanDiameter, lead } = screw;
  const budget = worksheetBudget(
    (v) => {
      const tensioner = {
        lead,
        efficiency: efficiency({ ...screw, ...v }),
        dragTorque: v.dragTorque,
      };
      return stressFromTorque(tensioner, { area: v.width * v.depth }, v.torque);
    },
    {
      torque: rectangular(torque, wrenchSpread * torque),
      dragTorque: { value: dragTorque, standardUncertainty: DRAG_DOUBT },
      threadFriction: rectangular(friction, threadFriction.high - friction),
      collarFriction: rectangular(collarFriction, COLLAR_SPREAD * collarFriction),
      meanDiameter: rectangular(meanDiameter, DIAMETER_SPREAD * meanDiameter),
      width: rectangular(bodyWidth, sectionSpread.bodyWidth),
      depth: rectangular(thickness, sectionSpread.thickness),
    },
  );
  return {
    stress: budget.value,
    standard: budget.standardUncertainty,
    expanded: COVERAGE * budget.standardUncertainty,
    efficiency: efficiency(screw),
    efficiencyLow: efficiency(screwWith(threadFriction.high, starts)),
    efficiencyHigh: efficiency(screwWith(threadFriction.low, starts)),
    lead,
  };
}

/** The prediction at one torque: middle and the two ends of its U. */
export interface PredictedPoint {
  readonly torque: number; // N·m
  readonly stress: number; // Pa
  readonly low: number; // Pa
  readonly high: number; // Pa
}

/** The prediction from the drag torque up to a torque, N·m, in steps; nothing is predicted at the drag itself. */
export function predictedCurve(screw: BelievedScrew, upTo: number): readonly PredictedPoint[] {
  const drag = OTTERSLEIGH.dragTorque;
  const steps = Array.from({ length: CURVE_STEPS }, (_, step) => (step + 1) / CURVE_STEPS);
  const points = steps.map((share) => {
    const torque = drag + share * (upTo - drag);
    const { stress, expanded } = predictedStress(screw, torque);
    return { torque, stress, low: Math.max(0, stress - expanded), high: stress + expanded };
  });
  return [{ torque: drag, stress: 0, low: 0, high: 0 }, ...points];
}

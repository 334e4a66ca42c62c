/**
 * The stress predicted at a torque of the worksheet: to first order, by trials, and as a curve. One
 * interval is meant to be shown: that by trials once it is there, and to first order until then.
 * Units: SI only (Pa, N·m).
 * Source: JCGM 101:2008 (GUM Supplement 1), from memory.
 */
import { coverage } from '../../assumptions.ts';
import { propagateByTrials } from '../../trials.ts';
import type { WorksheetContribution } from '../budget.ts';
import { worksheetBudget } from '../budget.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { worksheetTrials } from '../own-assumptions.ts';
import type { TorqueAtHand } from '../torque-at-hand.ts';
import type { ChainOperands, Theory } from './theory.ts';

/** The prediction at one torque, to first order; the budget's lines are in Pa. */
export interface PredictedResult {
  readonly stress: number; // Pa
  readonly standardUncertainty: number; // Pa
  readonly expandedUncertainty: number; // Pa, twice the standard one
  readonly low: number; // Pa, value − expanded, never below 0
  readonly high: number; // Pa
  readonly contributions: readonly WorksheetContribution[]; // largest first
  readonly operands: ChainOperands & { readonly torque: number };
}

/** The 95 % interval of the prediction by trials: skewed, as efficiency falls as one over friction. */
export interface PredictionTrials {
  readonly low: number; // Pa
  readonly high: number; // Pa
  readonly trials: number;
}

/** The prediction at one torque with its interval, never below 0. */
export interface PredictedPoint {
  readonly torque: number; // N·m
  readonly low: number; // Pa
  readonly stress: number; // Pa
  readonly high: number; // Pa
}

/** The prediction over several torques. */
export interface PredictedCurve {
  readonly points: readonly PredictedPoint[];
}

/** The prediction at a torque, N·m; refused (`belowDrag`) where the torque only turns the empty screw. */
export function worksheetPredicted(
  theory: Outcome<Theory>,
  torque: Outcome<TorqueAtHand>,
): Outcome<PredictedResult> {
  return whenReady({ theory, torque }, ({ theory: chain, torque: { torque } }) => {
    const { dragTorque } = chain.operands;
    if (torque <= dragTorque)
      return refused('belowDrag', { torque, dragTorque }, ['readings', chain.dragPath]);
    const { value, ...budget } = worksheetBudget(chain.stressOf, chain.inputsAt(torque));
    const expanded = coverage.factor * budget.standardUncertainty;
    return ready({
      stress: value,
      standardUncertainty: budget.standardUncertainty,
      expandedUncertainty: expanded,
      low: Math.max(0, value - expanded),
      high: value + expanded,
      contributions: budget.contributions,
      operands: { ...chain.operands, torque },
    });
  });
}

/** The 95 % interval at the torque of a prediction, by a fixed number of trials from a fixed seed. */
export function trialsOfPredicted(
  theory: Outcome<Theory>,
  predicted: Outcome<PredictedResult>,
): Outcome<PredictionTrials> {
  return whenReady({ theory, predicted }, ({ theory: chain, predicted: { operands } }) => {
    const { prediction: trials, seed } = worksheetTrials;
    const options = { probability: coverage.probability, trials, seed };
    const result = propagateByTrials(chain.stressOf, chain.inputsAt(operands.torque), options);
    return ready({ low: result.low, high: result.high, trials });
  });
}

/** How far an interval reaches to either side, in expanded uncertainties to first order. */
export interface Reach {
  readonly below: number;
  readonly above: number;
}

const evenReach: Reach = { below: 1, above: 1 };

/** The reach of an interval by trials about the prediction that it belongs to. */
export function reachOf({ low, high }: PredictionTrials, predicted: PredictedResult): Reach {
  const { stress, expandedUncertainty } = predicted;
  return {
    below: (stress - low) / expandedUncertainty,
    above: (high - stress) / expandedUncertainty,
  };
}

/** The prediction at each torque in N·m, none up to the drag torque; its interval reaches as told. */
export function worksheetPredictedCurve(
  theory: Outcome<Theory>,
  torques: readonly number[],
  { below, above }: Reach = evenReach,
): Outcome<PredictedCurve> {
  return whenReady({ theory }, ({ theory: chain }) =>
    ready({
      points: torques.flatMap((torque) => {
        const point = worksheetPredicted(ready(chain), ready({ torque }));
        if (!point.ready) return [];
        const { stress, expandedUncertainty } = point;
        const low = Math.max(0, stress - below * expandedUncertainty);
        return [{ torque, low, stress, high: stress + above * expandedUncertainty }];
      }),
    }),
  );
}

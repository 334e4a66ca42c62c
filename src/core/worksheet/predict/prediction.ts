/**
 * The stress predicted at a torque of the worksheet: to first order, by trials, and as a curve.
 * Units: SI only (Pa, N·m).
 * Source: JCGM 101:2008 (GUM Supplement 1), from memory.
 */
import { propagateByTrials } from '../../trials.ts';
import type { WorksheetContribution } from '../budget.ts';
import { worksheetBudget } from '../budget.ts';
import type { RowsResult } from '../measure/readings.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import type { ChainOperands, Theory } from './theory.ts';

/** The prediction at one torque, to first order; the budget's lines are in Pa. */
export interface PredictedResult {
  readonly stress: number; // Pa
  readonly standardUncertainty: number; // Pa
  readonly expandedUncertainty: number; // Pa, twice the standard one
  readonly low: number; // Pa, value − expanded
  readonly high: number; // Pa
  readonly contributions: readonly WorksheetContribution[]; // largest first
  readonly operands: ChainOperands & { readonly torque: number };
}

/** The 95 % range of the prediction by trials: skewed, as efficiency falls as one over friction. */
export interface PredictedRangeResult {
  readonly low: number; // Pa
  readonly high: number; // Pa
  readonly trials: number;
}

/** The prediction at one torque; `low` and `high` are value ∓ twice its standard uncertainty, never below 0. */
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

const trials = 20_000; // few enough to run at every keystroke
const seed = 1;

/** The top torque of the readings, N·m. */
export function topTorqueOf(
  rowsOutcome: Outcome<RowsResult>,
): Outcome<{ readonly torque: number }> {
  return whenReady({ rows: rowsOutcome }, ({ rows }) => ready({ torque: rows.topTorque }));
}

/** The prediction at a torque, N·m; refused (`belowDrag`) where the torque only turns the empty screw. */
export function worksheetPredicted(
  theory: Outcome<Theory>,
  torque: Outcome<{ readonly torque: number }>,
): Outcome<PredictedResult> {
  return whenReady({ theory, torque }, ({ theory: chain, torque: { torque } }) => {
    const { dragTorque } = chain.operands;
    if (torque <= dragTorque)
      return refused('belowDrag', { torque, dragTorque }, ['readings', 'tensioner.dragTorque']);
    const { value, ...budget } = worksheetBudget(chain.stressOf, chain.inputsAt(torque));
    const expanded = 2 * budget.standardUncertainty;
    return ready({
      stress: value,
      standardUncertainty: budget.standardUncertainty,
      expandedUncertainty: expanded,
      low: value - expanded,
      high: value + expanded,
      contributions: budget.contributions,
      operands: { ...chain.operands, torque },
    });
  });
}

/** The 95 % range at the torque of a prediction, by a fixed number of trials from a fixed seed. */
export function worksheetPredictedRange(
  theory: Outcome<Theory>,
  predicted: Outcome<PredictedResult>,
): Outcome<PredictedRangeResult> {
  return whenReady({ theory, predicted }, ({ theory: chain, predicted: { operands } }) => {
    const options = { probability: 0.95, trials, seed };
    const result = propagateByTrials(chain.stressOf, chain.inputsAt(operands.torque), options);
    return ready({ low: result.low, high: result.high, trials });
  });
}

/** The prediction at each torque in N·m; none up to the drag torque. */
export function worksheetPredictedCurve(
  theory: Outcome<Theory>,
  torques: readonly number[],
): Outcome<PredictedCurve> {
  return whenReady({ theory }, ({ theory: chain }) =>
    ready({
      points: torques.flatMap((torque) => {
        const point = worksheetPredicted(ready(chain), ready({ torque }));
        return point.ready
          ? [{ torque, low: Math.max(0, point.low), stress: point.stress, high: point.high }]
          : [];
      }),
    }),
  );
}

/**
 * The prediction as the worksheet's chart shows it: its 95 % range by trials, and a curve over torque.
 * Units: SI only (Pa, N·m).
 * Source: JCGM 101:2008 (GUM Supplement 1), from memory.
 */
import { propagateByTrials } from './trials.ts';
import type { Outcome } from './worksheet-outcome.ts';
import { ready, whenReady } from './worksheet-outcome.ts';
import type { PredictedResult, Theory } from './worksheet-theory.ts';
import { worksheetPredicted } from './worksheet-theory.ts';

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

/**
 * How far up a predicted stress may lie, where a maker's limit is at stake: an interval to first order ends too low, as
 * friction makes the true one lopsided.
 * Units: none, a ratio.
 * Source: JCGM 101:2008 (GUM Supplement 1), from memory, by the trials of prediction.ts but fewer of them.
 */
import { coverage } from '../../assumptions.ts';
import { propagateByTrials } from '../../trials.ts';
import type { Outcome } from '../outcome.ts';
import { ready } from '../outcome.ts';
import { worksheetTrials } from '../own-assumptions.ts';
import { worksheetPredicted } from './prediction.ts';
import type { Theory } from './theory.ts';

/** The upper end of the 95 % interval at a torque, N·m, over the predicted stress; never less than that to first order, 1 where nothing is predicted. */
export function upperReach(theory: Outcome<Theory>, torque: number): number {
  const predicted = worksheetPredicted(theory, ready({ torque }));
  if (!theory.ready || !predicted.ready) return 1;
  const { limit: trials, seed } = worksheetTrials;
  const options = { probability: coverage.probability, trials, seed };
  const { high } = propagateByTrials(theory.stressOf, theory.inputsAt(torque), options);
  return Math.max(high, predicted.high) / predicted.stress;
}

/** Distributions by trials: the examples of the GUM's supplement 1. Seeds are fixed. */
import { propagate } from '../../../src/core/budget.ts';
import type {
  UncertainInput,
  UncertainInputs,
} from '../../../src/core/statistics/uncertain-input.ts';
import { propagateByTrials } from '../../../src/core/trials.ts';
import { type Answer, type Answers, printed, recomputed } from '../answer.ts';
import { inputReader, numbersAt, type PublishedCase } from '../cases.ts';
import { boundsAt, normalAt } from './drawn-inputs.ts';

const TRIALS = 500_000;
const HALF = { probability: 0.95, trials: TRIALS, seed: 1 };

type Four = 'a' | 'b' | 'c' | 'd';
const sumOfFour = (v: Readonly<Record<Four, number>>) => v.a + v.b + v.c + v.d;
const normal: UncertainInput = { value: 0, standardUncertainty: 1 };
const rectangular = (deviation: number): UncertainInput => ({
  value: 0,
  halfWidth: deviation * Math.sqrt(3),
  shape: 'rectangular',
});

function fourNormal(): readonly Answer[] {
  const inputs = { a: normal, b: normal, c: normal, d: normal };
  const trials = propagateByTrials(sumOfFour, inputs, { ...HALF, trials: 1_000_000 });
  const budget = propagate(sumOfFour, inputs, HALF);
  const within = { absolute: 0.005 };
  // A million trials know the ends to 0.005 only, so their tolerance is the one given for trials.
  const byTrials = { absolute: 0.02 };
  return [
    printed('y', 'mean of four normal inputs', '', budget.value, within),
    printed('u', 'standard uncertainty', '', budget.standardUncertainty, within),
    printed('interval95 > 0', 'low end, 95 %, by trials', '', trials.low, byTrials),
    printed('interval95 > 1', 'high end, 95 %, by trials', '', trials.high, byTrials),
    recomputed('u', 'standard uncertainty', '', budget.standardUncertainty, 1e-12),
    recomputed('half', 'half-width, 95 %', '', budget.expandedUncertainty, 1e-12),
  ];
}

function dominantRectangular(): readonly Answer[] {
  const [one, ten] = [rectangular(1), rectangular(10)];
  const inputs = { a: one, b: one, c: one, d: ten };
  const trials = propagateByTrials(sumOfFour, inputs, { ...HALF, trials: 1_000_000 });
  const budget = propagate(sumOfFour, inputs, HALF);
  const reach = budget.expandedUncertainty;
  const within = { absolute: 0.06 };
  return [
    printed('u', 'standard uncertainty', '', budget.standardUncertainty, within),
    printed('interval95_MonteCarlo > 0', 'low end, 95 %, by trials', '', trials.low, within),
    printed('interval95_MonteCarlo > 1', 'high end, 95 %, by trials', '', trials.high, within),
    printed('interval95_GUM > 0', 'low end, 95 %, first order', '', -reach, within),
    printed('interval95_GUM > 1', 'high end, 95 %, first order', '', reach, within),
    recomputed('u', 'standard uncertainty', '', budget.standardUncertainty, 1e-12),
    recomputed('half_GUM', 'half-width, first order', '', reach, 1e-12),
  ];
}

function mass(from: PublishedCase): readonly Answer[] {
  const inputs = {
    reference: normalAt(from, 'mRc_mg > normal'),
    addition: normalAt(from, 'dmRc_mg > normal'),
    air: boundsAt(from, 'rhoA_kg_m3 > rectangular'),
    weight: boundsAt(from, 'rhoW_kg_m3 > rectangular'),
    standard: boundsAt(from, 'rhoR_kg_m3 > rectangular'),
  };
  const model = (v: Readonly<Record<keyof typeof inputs, number>>) =>
    (v.reference + v.addition) * (1 + (v.air - 1.2) * (1 / v.weight - 1 / v.standard)) - 100_000;
  const first = propagate(model, inputs, HALF);
  const trials = propagateByTrials(model, inputs, HALF);
  const reach = first.expandedUncertainty;
  const [u, ends] = [{ absolute: 0.0004 }, { absolute: 0.003 }];
  const spread = trials.standardUncertainty;
  return [
    printed('firstOrder > y', 'mass', 'mg', first.value, { decimals: 3 }),
    printed('firstOrder > u', 'its u, first order', 'mg', first.standardUncertainty, u),
    printed('firstOrder > interval95 > 0', 'low end, 95 %', 'mg', first.value - reach, ends),
    printed('firstOrder > interval95 > 1', 'high end, 95 %', 'mg', first.value + reach, ends),
    printed('monteCarlo > y', 'mass, by trials', 'mg', trials.value, u),
    printed('monteCarlo > u', 'its u, by trials', 'mg', spread, u),
    recomputed('u_firstOrder', 'u, first order', 'mg', first.standardUncertainty, 1e-6),
  ];
}

function comparisonLoss(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const keys = ['x1=0', 'x1=0.010', 'x1=0.050'];
  return numbersAt(from.inputs, 'x1').flatMap((x1, i) => {
    const inputs: UncertainInputs<'x1' | 'x2'> = {
      x1: { value: x1, standardUncertainty: n('u') },
      x2: { value: n('x2'), standardUncertainty: n('u') },
    };
    const trials = propagateByTrials((v) => v.x1 ** 2 + v.x2 ** 2, inputs, HALF);
    const [key, within] = [keys[i] as string, { absolute: 1e-6 }];
    return [
      printed(`${key} > y`, `loss, ${key}, by trials`, '', trials.value, within),
      printed(`${key} > u`, `its u, ${key}, by trials`, '', trials.standardUncertainty, within),
    ];
  });
}

export const trialAnswers: Answers = {
  's1-9-2-2-additive-normal': fourNormal,
  's1-9-2-4-dominant-rectangular': dominantRectangular,
  's1-9-3-mass-calibration': mass,
  's1-9-4-comparison-loss': comparisonLoss,
};

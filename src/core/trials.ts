/**
 * The distribution of a result by random trials of its inputs.
 * Units: the result's.
 * Source: JCGM 101:2008 (GUM Supplement 1), 7.7 (interval), 7.9 (adaptive number of trials), from
 * memory; checked against its examples 9.2 and 9.3.
 */
import { assertBelow, assertFinite, assertPositive, assertWhole } from './assert.ts';
import { randomSource } from './random.ts';
import { inputSampler } from './statistics/input-sampler.ts';
import { valueAtRank } from './statistics/selection.ts';
import type { InputModel, UncertainInputs } from './statistics/uncertain-input.ts';
import { mean, standardDeviation, sum } from './summary.ts';

const BLOCK = 10_000;
const MOST_BLOCKS = 500; // of an adaptive run
const MOST_TRIALS = BLOCK * MOST_BLOCKS;
const SIGNIFICANT_DIGITS = 2; // to which an adaptive run settles the standard uncertainty

/** What is asked of the trials. */
export interface TrialOptions {
  readonly probability: number; // held by low to high, as much left out on either side; 0 to 1
  readonly trials: number | 'adaptive'; // 2 to 5 000 000
  readonly seed: number; // whole, 0 to 2⁵³ − 1
}

/** Mean, standard deviation and interval of the result. */
export interface TrialResult {
  readonly value: number;
  readonly standardUncertainty: number;
  readonly low: number;
  readonly high: number;
  readonly trials: number; // that were made
}

/** Fills a list with values of the model, drawn anew at each call. */
function trialRunner<Name extends string>(
  model: InputModel<Name>,
  inputs: UncertainInputs<Name>,
  seed: number,
): (results: Float64Array) => void {
  const source = randomSource(seed);
  const names = Object.keys(inputs) as Name[];
  let trial = 0;
  // The model sees one object whose properties read the columns: nothing is built for a trial.
  const values = {} as Record<Name, number>;
  const columns = names.map((name) => {
    const column = new Float64Array(BLOCK);
    Object.defineProperty(values, name, { enumerable: true, get: () => column[trial] });
    return { column, draw: inputSampler(inputs[name], source) };
  });
  return (results) => {
    for (const { column, draw } of columns) {
      for (let i = 0; i < results.length; i += 1) column[i] = draw();
    }
    for (trial = 0; trial < results.length; trial += 1) results[trial] = model(values);
  };
}

/** What one lot of trials says; reorders it. */
function summary(results: Float64Array, probability: number): Omit<TrialResult, 'trials'> {
  const count = results.length;
  let total = 0;
  for (let i = 0; i < count; i += 1) total += results[i] as number;
  const value = total / count;
  assertFinite('value of the model', value);
  let squares = 0;
  for (let i = 0; i < count; i += 1) squares += ((results[i] as number) - value) ** 2;
  const held = Math.min(count - 1, Math.floor(probability * count + 0.5));
  const before = Math.floor((count - held + 1) / 2) - 1;
  return {
    value,
    standardUncertainty: Math.sqrt(squares / (count - 1)),
    low: valueAtRank(results, before),
    high: valueAtRank(results, before + held, before),
  };
}

/** All blocks together: spread about the common mean, ends as the mean of the blocks' ends. */
function pooled(blocks: readonly Omit<TrialResult, 'trials'>[]): TrialResult {
  const trials = BLOCK * blocks.length;
  const value = mean(blocks.map((block) => block.value));
  const squares = blocks.map(
    (block) => (BLOCK - 1) * block.standardUncertainty ** 2 + BLOCK * (block.value - value) ** 2,
  );
  return {
    value,
    standardUncertainty: Math.sqrt(sum(squares) / (trials - 1)),
    low: mean(blocks.map((block) => block.low)),
    high: mean(blocks.map((block) => block.high)),
    trials,
  };
}

/** Whether twice the standard error of each block average is within half a unit of the last digit of u. */
function isSettled(blocks: readonly Omit<TrialResult, 'trials'>[]): boolean {
  const { standardUncertainty } = pooled(blocks);
  const exponent = Math.floor(Math.log10(standardUncertainty)) - (SIGNIFICANT_DIGITS - 1);
  const tolerance = 10 ** exponent / 2;
  return (['value', 'standardUncertainty', 'low', 'high'] as const).every((name) => {
    const deviation = standardDeviation(blocks.map((block) => block[name]));
    return (2 * deviation) / Math.sqrt(blocks.length) <= tolerance;
  });
}

function adaptiveTrials(run: (results: Float64Array) => void, probability: number): TrialResult {
  const results = new Float64Array(BLOCK);
  const blocks: Omit<TrialResult, 'trials'>[] = [];
  do {
    run(results);
    blocks.push(summary(results, probability));
  } while (blocks.length < 2 || (blocks.length < MOST_BLOCKS && !isSettled(blocks)));
  return pooled(blocks);
}

/**
 * Mean, standard deviation and interval of a model's value over random trials of its inputs, drawn
 * independently. `'adaptive'` makes blocks of 10 000 until two digits of u stand, 5 000 000 at most.
 * @throws RangeError if an input or an option is out of range, or the model's value is not finite
 */
export function propagateByTrials<Name extends string>(
  model: InputModel<Name>,
  inputs: UncertainInputs<Name>,
  { probability, trials, seed }: TrialOptions,
): TrialResult {
  assertPositive('probability', probability);
  assertBelow('probability', probability, 1);
  const run = trialRunner(model, inputs, seed);
  if (trials === 'adaptive') return adaptiveTrials(run, probability);
  assertWhole('trials', trials, 2, MOST_TRIALS);
  const results = new Float64Array(trials);
  for (let from = 0; from < trials; from += BLOCK) run(results.subarray(from, from + BLOCK));
  return { ...summary(results, probability), trials };
}

/**
 * One million trials of the stress model, interval included, against the same trials with the model as a compiled
 * mathjs expression and the results sorted in full, as one would write it without this core: same sampling, same
 * run; the best of a few rounds taken in turn.
 */
import { compile } from 'mathjs';
import { randomSource } from '../../src/core/random.ts';
import { inputSampler } from '../../src/core/statistics/input-sampler.ts';
import { propagateByTrials } from '../../src/core/trials.ts';

const TRIALS = 1_000_000;
const ROUNDS = 3;
const LIMIT = 1 / 3;

/** The budget of a measured stress on an invented mill: 205 GPa, 0.2 mm over 0.4 m. */
const inputs = {
  youngsModulus: { value: 205e9, halfWidth: 5e9, shape: 'rectangular' },
  stretch: { value: 208e-6, standardDeviation: 16.9e-6, degreesOfFreedom: 10 },
  drag: { value: 0, standardUncertainty: 1.5e-6 },
  dial: { value: 0, halfWidth: 1e-5, shape: 'rectangular' },
  gaugeLength: { value: 0.4, halfWidth: 1e-3, shape: 'rectangular' },
  alignment: { value: 0.9982, halfWidth: 0.0018, shape: 'rectangular' },
  warmth: { value: 0, halfWidth: 1.15e-5, shape: 'rectangular' },
} as const;

type Values = Readonly<Record<keyof typeof inputs, number>>;

const stressOf = (v: Values) =>
  (v.youngsModulus * ((v.stretch + v.drag + v.dial) / v.gaugeLength + v.warmth)) / v.alignment;

const expression = compile(
  'youngsModulus * ((stretch + drag + dial) / gaugeLength + warmth) / alignment',
);

function trialsOfCore(): number {
  const { low } = propagateByTrials(stressOf, inputs, {
    probability: 0.95,
    trials: TRIALS,
    seed: 1,
  });
  return low;
}

/** One scope for all trials: nothing is built that the expression does not ask for. */
function trialsOfMathjs(): number {
  const source = randomSource(1);
  const draws = Object.entries(inputs).map(
    ([name, input]) => [name, inputSampler(input, source)] as const,
  );
  const scope: Record<string, number> = {};
  const results = new Float64Array(TRIALS);
  for (let trial = 0; trial < TRIALS; trial += 1) {
    for (const [name, draw] of draws) scope[name] = draw();
    results[trial] = expression.evaluate(scope) as number;
  }
  return results.sort()[Math.floor(0.025 * TRIALS)] ?? Number.NaN;
}

function secondsFor(trials: () => number): number {
  const start = performance.now();
  const low = trials();
  if (!(low > 0)) throw new Error(`the trials gave ${low}`);
  return (performance.now() - start) / 1000;
}

/** One line: both times and their ratio, against the limit. */
export function trialsAgainstMathjs(): readonly string[] {
  const rounds = Array.from({ length: ROUNDS }, () => [
    secondsFor(trialsOfCore),
    secondsFor(trialsOfMathjs),
  ]);
  const [ours = 0, theirs = 1] = [0, 1].map((one) =>
    Math.min(...rounds.map((round) => round[one] ?? Number.POSITIVE_INFINITY)),
  );
  const ratio = (ours / theirs).toFixed(2);
  return [
    `one million trials of the stress model: ${ours.toFixed(2)} s, as mathjs expression ${theirs.toFixed(2)} s, ratio ${ratio} (limit ${LIMIT.toFixed(2)})`,
  ];
}

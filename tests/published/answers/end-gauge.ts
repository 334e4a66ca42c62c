/** The GUM's end gauge, example H.1: the budget part by part, and its terms of second order by trials. */
import { propagate } from '../../../src/core/budget.ts';
import { tQuantile } from '../../../src/core/student.ts';
import { propagateByTrials } from '../../../src/core/trials.ts';
import { type Answer, type Answers, printed, recomputed } from '../answer.ts';
import { inputReader, type PublishedCase } from '../cases.ts';

const SHARES = {
  ls: 'the standard gauge',
  d: 'the difference of the two',
  dAlpha: 'their difference in growth',
  dTheta: 'their difference in warmth',
} as const;
const HUNDREDTH = { probability: 0.99 };
const gaugeModel = (
  v: Readonly<Record<'ls' | 'd' | 'dAlpha' | 'theta' | 'alphaS' | 'dTheta', number>>,
) => v.ls + v.d - v.ls * (v.dAlpha * v.theta + v.alphaS * v.dTheta);

/** The three parts of d; the last is 0.02 µm at three standard deviations, printed rounded as 6.7 nm. */
function differenceOfGauges(from: PublishedCase) {
  const n = inputReader(from);
  const part = (i: number, u: number) => ({
    value: 0,
    standardUncertainty: u,
    degreesOfFreedom: n(`d > components > ${i} > dof`),
  });
  const parts = {
    mean: { ...part(0, n('d > components > 0 > u')), value: n('d > value') },
    random: part(1, n('d > components > 1 > u')),
    systematic: part(2, 20 / 3),
  };
  return propagate((v) => v.mean + v.random + v.systematic, parts, HUNDREDTH);
}

function endGaugeInputs(from: PublishedCase) {
  const n = inputReader(from);
  const d = differenceOfGauges(from);
  const bounds = (key: string) => ({
    value: n(`${key} > value`),
    halfWidth: n(`${key} > halfWidth`),
  });
  const estimated = (key: string) => ({
    value: n(`${key} > value`),
    standardUncertainty: n(`${key} > halfWidth`) / Math.sqrt(3),
    degreesOfFreedom: n(`${key} > dof`),
  });
  return {
    ls: {
      value: n('ls > value'),
      standardUncertainty: n('ls > u'),
      degreesOfFreedom: n('ls > dof'),
    },
    d: {
      value: d.value,
      standardUncertainty: d.standardUncertainty,
      degreesOfFreedom: d.degreesOfFreedom,
    },
    dAlpha: estimated('dAlpha'),
    theta: { value: n('theta > value'), standardUncertainty: n('theta > u') },
    alphaS: { ...bounds('alphaS'), shape: 'rectangular' as const },
    dTheta: estimated('dTheta'),
  };
}

/** What the terms of second order add shows in trials: the model is bilinear. */
function spreadByTrials(inputs: ReturnType<typeof endGaugeInputs>): number {
  const normal = (name: 'ls' | 'd') => ({
    value: inputs[name].value,
    standardUncertainty: inputs[name].standardUncertainty,
  });
  const bounds = (halfWidth: number) => ({ value: 0, halfWidth, shape: 'rectangular' as const });
  const { value } = inputs.theta;
  const drawn = {
    ls: normal('ls'),
    d: normal('d'),
    dAlpha: bounds(1e-6),
    theta: { value, standardUncertainty: 0.2 },
    swing: { value: 0, halfWidth: 0.5, shape: 'arcsine' as const },
    alphaS: inputs.alphaS,
    dTheta: bounds(0.05),
  };
  const model = (v: Readonly<Record<keyof typeof drawn, number>>) =>
    v.ls - 50_000_623 + v.d - v.ls * (v.dAlpha * (v.theta + v.swing) + v.alphaS * v.dTheta);
  return propagateByTrials(model, drawn, { ...HUNDREDTH, trials: 400_000, seed: 1 })
    .standardUncertainty;
}

function endGauge(from: PublishedCase): readonly Answer[] {
  const inputs = endGaugeInputs(from);
  const budget = propagate(gaugeModel, inputs, HUNDREDTH);
  const part = (name: string) =>
    budget.contributions.find((line) => line.name === name)?.contribution ?? Number.NaN;
  const u = budget.standardUncertainty;
  const whole = Math.floor(budget.degreesOfFreedom); // the GUM truncates
  const t = tQuantile(0.995, whole);
  const contributions = Object.entries(SHARES).map(([name, what]) =>
    printed(`contributions > ${name}`, `share of ${what}`, 'nm', part(name), { absolute: 0.05 }),
  );
  return [
    printed('l', 'length', 'nm', budget.value, { decimals: 0 }),
    printed('uc', 'standard uncertainty', 'nm', u, { absolute: 0.5 }),
    ...contributions,
    printed('dofOfD', 'degrees of freedom of the difference', '', inputs.d.degreesOfFreedom, {
      decimals: 1,
    }),
    printed('effectiveDof', 'effective degrees of freedom', '', budget.degreesOfFreedom, {
      absolute: 0.1,
    }),
    printed('dofUsed', 'the same, truncated', '', whole, { decimals: 0 }),
    printed('t99', 'factor of coverage, 99 %', '', t, { decimals: 2 }),
    printed('U99', 'expanded uncertainty, 99 %', 'nm', t * u, { absolute: 0.6 }),
    printed(
      'ucWithSecondOrderTerms',
      'uncertainty with second order, by trials',
      'nm',
      spreadByTrials(inputs),
      {
        absolute: 0.5,
      },
    ),
    recomputed('uc', 'standard uncertainty', 'nm', u, 1e-6),
    recomputed('effectiveDof', 'effective degrees of freedom', '', budget.degreesOfFreedom, 1e-6),
    recomputed(
      'dofOfD',
      'degrees of freedom of the difference',
      '',
      inputs.d.degreesOfFreedom,
      1e-6,
    ),
  ];
}

export const endGaugeAnswers: Answers = { 'gum-h1-end-gauge': endGauge };

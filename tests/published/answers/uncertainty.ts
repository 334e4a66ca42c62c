/** Budgets and factors of coverage: the GUM's examples and its table of Student's t, and a NIST note. */
import { propagate } from '../../../src/core/budget.ts';
import { tCdf, tQuantile } from '../../../src/core/student.ts';
import { mean, standardDeviation } from '../../../src/core/summary.ts';
import { propagateByTrials } from '../../../src/core/trials.ts';
import { type Answer, type Answers, printed, recomputed } from '../answer.ts';
import { inputReader, numbersAt, type PublishedCase, valueAt } from '../cases.ts';

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
  const contributions = ['ls', 'd', 'dAlpha', 'dTheta'].map((name) =>
    printed(`contributions > ${name}`, `share of ${name}`, 'nm', part(name), { absolute: 0.05 }),
  );
  return [
    printed('l', 'length', 'nm', budget.value, { decimals: 0 }),
    printed('uc', 'standard uncertainty', 'nm', u, { absolute: 0.5 }),
    ...contributions,
    printed('dofOfD', 'degrees of freedom of d', '', inputs.d.degreesOfFreedom, { decimals: 1 }),
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
    recomputed('dofOfD', 'degrees of freedom of d', '', inputs.d.degreesOfFreedom, 1e-6),
  ];
}

function days({ inputs }: PublishedCase): readonly Answer[] {
  const daily = numbersAt(inputs, 'dailyMean_uV_above_10V');
  const within = numbersAt(inputs, 'dailySD_uV').map((sd) => sd ** 2);
  const [spread, pooled] = [standardDeviation(daily), Math.sqrt(mean(within))];
  return [
    printed('mean_uV_above_10V', 'mean', 'µV', mean(daily), { absolute: 0.5 }),
    printed('s_of_daily_means', 'sd of daily means', 'µV', spread, { absolute: 0.5 }),
    printed('pooled_within_day_s', 'sd within a day', 'µV', pooled, { absolute: 0.5 }),
    recomputed('s_of_daily_means', 'sd of daily means', 'µV', spread, 1e-9),
    recomputed('pooled_within_day_s', 'sd within a day', 'µV', pooled, 1e-9),
  ];
}

/** Of 68.27, 95.45 and 99.73 % the normal distribution's 1, 2 and 3 deviations are meant. */
function probabilityOf(percent: string): number {
  const whole = ['68.27', '95.45', '99.73'].indexOf(percent) + 1;
  return whole > 0 ? tCdf(whole, Number.POSITIVE_INFINITY) : 0.5 + Number(percent) / 200;
}

function studentTable({ inputs }: PublishedCase): readonly Answer[] {
  const fractions = valueAt(inputs, 'fractions_percent') as readonly string[];
  return numbersAt(inputs, 'dof').flatMap((degrees) =>
    fractions.flatMap((percent, column) => {
      const t = tQuantile(probabilityOf(percent), degrees);
      const quantity = `t for ${percent} %, ${degrees} degrees of freedom`;
      // The last row is printed to three decimals, the others to two.
      const decimals = degrees === 100 ? 3 : 2;
      return [
        printed(`${degrees} > ${column}`, quantity, '', t, { decimals }),
        recomputed(`${degrees} > ${column}`, quantity, '', t, 1e-12),
      ];
    }),
  );
}

function thermalExpansion(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const input = (key: string) => ({
    value: n(`${key} > value`),
    standardUncertainty: n(`${key} > u`),
  });
  const inputs = { l0: input('L0_m'), l1: input('L1_m'), t0: input('T0_K'), t1: input('T1_K') };
  const budget = propagate(({ l0, l1, t0, t1 }) => (l1 - l0) / (l0 * (t1 - t0)), inputs, {
    probability: 0.95,
  });
  const u = budget.standardUncertainty;
  return [
    printed('alpha', 'thermal growth', '1/K', budget.value, { absolute: 1e-9 }),
    printed('u', 'its standard uncertainty', '1/K', u, { absolute: 1e-8 }),
    recomputed('alpha', 'thermal growth', '1/K', budget.value, 1e-9),
    recomputed('u', 'its standard uncertainty', '1/K', u, 1e-9),
  ];
}

export const uncertaintyAnswers: Answers = {
  'gum-h1-end-gauge': endGauge,
  'gum-h5-anova': days,
  'gum-g2-t-a': studentTable,
  'nist-tn1900-thermal-expansion': thermalExpansion,
};

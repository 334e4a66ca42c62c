/** Budgets and factors of coverage: the GUM's examples and its table of Student's t, and a NIST note. */
import { propagate } from '../../../src/core/budget.ts';
import { tCdf, tQuantile } from '../../../src/core/student.ts';
import { mean, standardDeviation } from '../../../src/core/summary.ts';
import { type Answer, type Answers, printed, recomputed } from '../answer.ts';
import { inputReader, numbersAt, type PublishedCase, valueAt } from '../cases.ts';

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
  'gum-h5-anova': days,
  'gum-g2-t-a': studentTable,
  'nist-tn1900-thermal-expansion': thermalExpansion,
};

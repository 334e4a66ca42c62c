/**
 * What makes the stress of a planned measurement uncertain, and by how much as a rule: it is made many times over, and of
 * each line of its budget the middle one is taken.
 * Units: shares of the stress; lengths of the plan in m, stresses in Pa.
 * Source: derived here; the measurements as in simulator.ts.
 */
import { assertWhole } from '../assert.ts';
import { randomSource } from '../random.ts';
import { budgetSimulator, type MeasurementPlan } from './simulator.ts';

/** Standard uncertainties as shares of the stress, by what they come from, and how many of them together an interval of 95 % reaches. */
export interface TypicalBudget {
  readonly shares: Readonly<Record<string, number>>;
  readonly coverageFactor: number;
}

const MOST_REPEATS = 10_000;

function middle(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] as number;
}

/**
 * The typical budget over so many measurements; the same seed gives the same ones. Those that give no stress are left out.
 * @throws RangeError unless repeats are 1 to 10 000, and where no measurement gives a stress
 */
export function typicalBudget(plan: MeasurementPlan, repeats: number, seed: number): TypicalBudget {
  assertWhole('repeats', repeats, 1, MOST_REPEATS);
  const simulate = budgetSimulator(plan);
  const random = randomSource(seed);
  const budgets = Array.from({ length: repeats }, () => simulate(random) ?? []).flat();
  const [first] = budgets;
  if (!first) throw new RangeError('the plan must give a stress (none did)');
  const shareOf = (name: string) =>
    middle(
      budgets.map(({ value, contributions }) => {
        const line = contributions.find((each) => each.name === name);
        return (line?.contribution ?? 0) / value;
      }),
    );
  return {
    shares: Object.fromEntries(first.contributions.map(({ name }) => [name, shareOf(name)])),
    coverageFactor: middle(budgets.map((budget) => budget.coverageFactor)),
  };
}

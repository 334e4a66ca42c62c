/**
 * The uncertainty of a result from those of its inputs, to first order.
 * Units: the result's; sensitivities in units of the result over those of the input.
 * Source: JCGM 100:2008 (GUM), 5.1 and 5.2 (with correlations), G.4 (Welch-Satterthwaite), from
 * memory; checked against its examples H.1, H.3 and G.4.1.
 */
import { assertBelow, assertFinite, assertPositive } from './assert.ts';
import { type Correlation, combinedVariance } from './statistics/correlated-groups.ts';
import { derivative } from './statistics/derivative.ts';
import {
  type InputModel,
  inputDegreesOfFreedom,
  standardUncertainty,
  type UncertainInputs,
} from './statistics/uncertain-input.ts';
import { tQuantile } from './student.ts';

const FIRST_STEP = 0.25; // in standard uncertainties: a model need not hold further out
const STEP_WITHOUT_UNCERTAINTY = 1e-3; // of the value
const NEGLIGIBLE = 1e-9; // share of the value: steps as small as that would be lost in rounding

/** What is asked of a budget. */
export interface BudgetOptions<Name extends string> {
  readonly probability: number; // that value ± expandedUncertainty holds the truth, 0 to 1
  readonly correlations?: readonly Correlation<Name>[];
}

/** One line of a budget. */
export interface Contribution<Name extends string> {
  readonly name: Name;
  readonly sensitivity: number; // ∂y/∂x, signed
  readonly contribution: number; // |∂y/∂x|·u(x), unit of the result
}

/** The result with its uncertainty and the lines that make it up, in the order of the inputs. */
export interface Budget<Name extends string> {
  readonly value: number;
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number; // effective; Infinity if no input limits it
  readonly coverageFactor: number;
  readonly expandedUncertainty: number;
  readonly contributions: readonly Contribution<Name>[];
}

function contributionOf<Name extends string>(
  name: Name,
  model: InputModel<Name>,
  values: Readonly<Record<Name, number>>,
  uncertainty: number,
): Contribution<Name> {
  const value = values[name];
  const scale = STEP_WITHOUT_UNCERTAINTY * (Math.abs(value) || 1);
  const isFelt = uncertainty > NEGLIGIBLE * Math.abs(value);
  const step = isFelt ? FIRST_STEP * uncertainty : scale;
  const sensitivity = derivative((x) => model({ ...values, [name]: x }), value, step);
  assertFinite(`sensitivity to ${name}`, sensitivity);
  return { name, sensitivity, contribution: Math.abs(sensitivity) * uncertainty };
}

/**
 * Propagates uncertainties through a model: u² = Σ(∂y/∂x·u(x))², U = t((1 + probability)/2, ν)·u.
 * @throws RangeError if an input, a correlation or the probability is out of range, or the model
 * gives no finite number at or close beside the values
 */
export function propagate<Name extends string>(
  model: InputModel<Name>,
  inputs: UncertainInputs<Name>,
  { probability, correlations = [] }: BudgetOptions<Name>,
): Budget<Name> {
  assertPositive('probability', probability);
  assertBelow('probability', probability, 1);
  const names = Object.keys(inputs) as Name[];
  const values = Object.fromEntries(names.map((name) => [name, inputs[name].value])) as Record<
    Name,
    number
  >;
  const value = model(values);
  assertFinite('value of the model', value);
  const contributions = names.map((name) =>
    contributionOf(name, model, values, standardUncertainty(inputs[name])),
  );
  const shares = contributions.map(({ name, sensitivity, contribution }) => {
    const signed = Math.sign(sensitivity) * contribution;
    return [name, { signed, degreesOfFreedom: inputDegreesOfFreedom(inputs[name]) }] as const;
  });
  const { variance, degreesOfFreedom } = combinedVariance(new Map(shares), correlations);
  const combined = Math.sqrt(variance);
  const coverageFactor = tQuantile((1 + probability) / 2, degreesOfFreedom);
  return {
    value,
    standardUncertainty: combined,
    degreesOfFreedom,
    coverageFactor,
    expandedUncertainty: coverageFactor * combined,
    contributions,
  };
}

/**
 * How far off each way puts the zero, counted over many series: in bins, as a typical error, and how often an interval
 * holds the truth.
 * Units: m.
 * Source: definition; the bins are those of d3-array.
 */
import { bin, range } from 'd3-array';
import { sum } from '../../../core/summary.ts';
import { BIN, REACH, RULES, type Rule } from './rules.ts';

/** What one way made of one series; those by eye have no interval. */
export interface FoundZero {
  readonly zero: number; // m
  readonly low?: number; // m, 95 %
  readonly high?: number; // m
}

/** One series with all that was found in it. */
export interface Repeat {
  readonly trueZero: number; // m
  readonly found: Readonly<Record<Rule, FoundZero>>;
}

/** The count of one way. */
export interface RuleTally {
  readonly bins: readonly number[];
  readonly squares: number; // m², of all errors together
  readonly held: number; // intervals with the truth in them
}

/** The counts of all ways over so many series. */
export interface Tally {
  readonly repeats: number;
  readonly rules: Readonly<Record<Rule, RuleTally>>;
}

const sorted = bin<number, number>()
  .domain([-REACH, REACH])
  .thresholds(range(1, Math.round((2 * REACH) / BIN)).map((edge) => edge * BIN - REACH));

const byRule = <Value>(of: (rule: Rule) => Value) =>
  Object.fromEntries(RULES.map((rule) => [rule, of(rule)])) as Record<Rule, Value>;

const holds = ({ low = Infinity, high = -Infinity }: FoundZero, truth: number): boolean =>
  low <= truth && truth <= high;

/** Counts series. */
export function tallyOf(repeats: readonly Repeat[]): Tally {
  const rules = byRule((rule) => {
    const errors = repeats.map(({ trueZero, found }) => found[rule].zero - trueZero);
    return {
      bins: sorted(errors).map((each) => each.length),
      squares: sum(errors.map((error) => error ** 2)),
      held: repeats.filter(({ trueZero, found }) => holds(found[rule], trueZero)).length,
    };
  });
  return { repeats: repeats.length, rules };
}

/** Two counts as one. */
export function joined(one: Tally, other: Tally): Tally {
  const rules = byRule((rule) => {
    const [first, second] = [one.rules[rule], other.rules[rule]];
    return {
      bins: first.bins.map((count, place) => count + (second.bins[place] ?? 0)),
      squares: first.squares + second.squares,
      held: first.held + second.held,
    };
  });
  return { repeats: one.repeats + other.repeats, rules };
}

/** The typical error of a way, root mean square, in m. */
export function typicalError({ repeats, rules }: Tally, rule: Rule): number {
  return Math.sqrt(rules[rule].squares / repeats);
}

/**
 * The causes of uncertainty by themselves and together, for a bar and a change: each as the ± that it alone would leave.
 * Units: Pa; lengths of the bar in m.
 * Source: typical.worked.ts; the squares add, JCGM 100 (2008), 5.1 (`gum`).
 */
import { OTTERSLEIGH } from '../../../models/mills/ottersleigh.ts';
import { BARS_TRIED, type Change } from './plans.ts';
import { typical } from './typical.worked.ts';

/** The causes that a reader can tell apart, each with the lines of the worksheet's budget that are in it. */
const LINES = {
  line: ['stretch'],
  dial: ['dial'],
  modulus: ['youngsModulus'],
  warmth: ['warmthTogether', 'warmthApart'],
  noLoad: ['drag'],
  bar: ['gaugeLength', 'misalignment'],
} as const;

/** A cause by its name. */
export type Cause = keyof typeof LINES;

/** All causes. */
export const CAUSES = Object.keys(LINES) as readonly Cause[];

const rootOfSquares = (values: readonly number[]) => Math.hypot(...values);

/** Where a bar is between two that were tried: their places, and how far on from the first, by one over the length. */
function between(bar: number) {
  const next = BARS_TRIED.findIndex((tried) => tried >= bar);
  const place = Math.max(1, next) - 1;
  const [from, to] = [BARS_TRIED[place] as number, BARS_TRIED[place + 1] as number];
  return { place, on: (1 / bar - 1 / from) / (1 / to - 1 / from) };
}

/** The ± of each cause, and of all together, at 95 %. */
export function uncertainty(bar: number, change: Change) {
  const { place, on } = between(bar);
  const budgets = typical[change] ?? [];
  const mixed = (pick: (budget: (typeof budgets)[number]) => number) => {
    const [from, to] = [budgets[place], budgets[place + 1]].map((budget) =>
      budget ? pick(budget) : 0,
    );
    return (from ?? 0) + on * ((to ?? 0) - (from ?? 0));
  };
  const reach = mixed(({ coverageFactor }) => coverageFactor) * OTTERSLEIGH.targetStress;
  const alone = CAUSES.map((cause) => {
    const lines = LINES[cause].map((name) => mixed(({ shares }) => shares[name] ?? 0));
    return [cause, reach * rootOfSquares(lines)] as const;
  });
  const parts = Object.fromEntries(alone) as Readonly<Record<Cause, number>>;
  return { parts, whole: rootOfSquares(Object.values(parts)) };
}

/**
 * How much a class has gained between two rounds of the same questions: the share of what it could still learn.
 * Units: none; scores are shares of right answers, 0 to 1.
 * Source: R. R. Hake, American Journal of Physics 66 (1998) 64 (`hake-1998`), from memory: ⟨g⟩ from the
 * class's two averages, and the bands low, medium, high. The uncertainty is derived here: first order
 * in both averages, each learner's two scores taken together, after the GUM.
 */
import { assertAtLeast, assertAtMost, assertBelow, assertFinite } from '../assert.ts';
import { tQuantile } from '../student.ts';
import { mean, standardDeviation } from './moments.ts';

/** Shares of right answers before and after, of a learner or of a class's averages. */
export interface TwoScores {
  readonly before: number;
  readonly after: number;
}

/** What a class gained; `low` and `high`, at most 1, hold the truth with `probability`. */
export interface ClassGain extends TwoScores {
  readonly gain: number;
  readonly standardUncertainty: number;
  readonly low: number;
  readonly high: number;
}

/** The bands of the paper: below 0.3, from there to below 0.7, from there on. */
export const gainBands = { medium: 0.3, high: 0.7 } as const;

function assertScores({ before, after }: TwoScores): void {
  for (const [name, score] of Object.entries({ before, after })) {
    assertAtLeast(name, score, 0);
    assertAtMost(name, score, 1);
  }
}

/**
 * Normalized gain (after − before)/(1 − before), no unit, at most 1; below 0 where less was right afterwards.
 * @throws RangeError unless both are from 0 to 1, and before below 1
 */
export function normalizedGain({ before, after }: TwoScores): number {
  assertScores({ before, after });
  assertBelow('before', before, 1);
  return (after - before) / (1 - before);
}

/** In which band of the paper a gain is. @throws RangeError unless finite */
export function gainBand(gain: number): 'low' | 'medium' | 'high' {
  assertFinite('gain', gain);
  if (gain < gainBands.medium) return 'low';
  return gain < gainBands.high ? 'medium' : 'high';
}

/**
 * The gain of a class from its learners' scores: averages first, then the gain, and how far the spread of the learners
 * leaves it open: s(e)/√n with e = (after − (1 − g)·before)/(1 − ⟨before⟩).
 * @throws RangeError with fewer than 2 learners, for a score that is no share, or where all was right before
 */
export function classGain(learners: readonly TwoScores[], probability: number): ClassGain {
  assertAtLeast('number of learners', learners.length, 2);
  for (const learner of learners) assertScores(learner);
  const before = mean(learners.map((learner) => learner.before));
  const after = mean(learners.map((learner) => learner.after));
  const gain = normalizedGain({ before, after });
  // What each learner moves the gain by: ∂g/∂⟨after⟩ = 1/(1 − ⟨before⟩), ∂g/∂⟨before⟩ = (g − 1)/(1 − ⟨before⟩).
  const shares = learners.map(
    (learner) => (learner.after - (1 - gain) * learner.before) / (1 - before),
  );
  const standardUncertainty = standardDeviation(shares) / Math.sqrt(learners.length);
  const reach = tQuantile((1 + probability) / 2, learners.length - 1) * standardUncertainty;
  return {
    before,
    after,
    gain,
    standardUncertainty,
    low: gain - reach,
    high: Math.min(1, gain + reach),
  };
}

/**
 * What a class's scores come to, in words.
 * Units: shares.
 */
import { coverage } from '../../core/assumptions.ts';
import { classGain, gainBand, gainBands, type TwoScores } from '../../core/summary.ts';
import { formatQuantity, formatRange } from '../../units/format-quantity.ts';

const share = (value: number) => formatQuantity(value, 'percent', 'metric', { digits: 2 });
const bare = (value: number, uncertainty: number) =>
  formatQuantity(value, 'ratio', 'metric', { uncertainty });

/** The words for a class: the finding, then what lies behind it. */
export interface GainWords {
  readonly finding: string;
  readonly details: readonly string[];
}

const [medium, high] = [gainBands.medium, gainBands.high].map((edge) =>
  formatQuantity(edge, 'ratio', 'metric'),
);
const BANDS = {
  low: `low: below ${medium}`,
  medium: `medium: from ${medium} to ${high}`,
  high: `high: ${high} or more`,
} as const;

const leftOut = (halves: number): readonly string[] => {
  if (halves === 0) return [];
  return [
    halves === 1
      ? 'One learner has one score only and is left out.'
      : `${halves} learners have one score only and are left out.`,
  ];
};

/** The gain of a class in words; `halves` are the learners with one score only. */
export function gainWords(learners: readonly TwoScores[], halves: number): GainWords {
  const missing = leftOut(halves);
  if (learners.length < 2)
    return { finding: 'Type both scores of at least two learners.', details: missing };
  if (learners.every(({ before }) => before === 1))
    return { finding: 'All was right before: there was nothing left to gain.', details: missing };
  const found = classGain(learners, coverage.probability);
  const { before, after, gain, standardUncertainty } = found;
  return {
    finding: `Your class gained ${bare(gain, standardUncertainty)}. That is ${BANDS[gainBand(gain)]}.`,
    details: [
      `${learners.length} learners: ${share(before)} right before, ${share(after)} right after.`,
      `Of what they could still learn, they learned ${share(gain)}.`,
      `It may be anything from ${formatRange(found.low, found.high, 'ratio', 'metric')}, with ${share(coverage.probability)} confidence.`,
      ...missing,
    ],
  };
}

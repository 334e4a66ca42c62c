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

/** The gain of a class in words. */
export function gainWords(learners: readonly TwoScores[]): GainWords {
  if (learners.length < 2)
    return { finding: 'Type both scores of at least two learners.', details: [] };
  if (learners.every(({ before }) => before === 1))
    return { finding: 'All was right before: there was nothing left to gain.', details: [] };
  const found = classGain(learners, coverage.probability);
  const { before, after, gain, standardUncertainty } = found;
  return {
    finding: `Your class gained ${bare(gain, standardUncertainty)}. That is ${BANDS[gainBand(gain)]}.`,
    details: [
      `${learners.length} learners: ${share(before)} right before, ${share(after)} right after.`,
      `Of what they could still learn, they learned ${share(gain)}.`,
      `It may be anything from ${formatRange(found.low, found.high, 'ratio', 'metric')}, with ${share(coverage.probability)} confidence.`,
    ],
  };
}

/**
 * What a class's scores come to, in words.
 * Units: shares.
 */
import { coverage } from '../../core/assumptions.ts';
import { classGain, gainBand, gainBands, type TwoScores } from '../../core/gain.ts';
import { formatQuantity, formatRange } from '../../units/format-quantity.ts';

const share = (value: number) => formatQuantity(value, 'percent', 'metric', { digits: 2 });
const bare = (value: number, uncertainty?: number) =>
  formatQuantity(value, 'ratio', 'metric', uncertainty ? { uncertainty } : { digits: 2 });

/** The words for a class: the finding, then what lies behind it. */
export interface GainWords {
  readonly finding: string;
  readonly details: readonly string[];
}

const BANDS = {
  low: `low: below ${bare(gainBands.medium)}`,
  medium: `medium: from ${bare(gainBands.medium)} to ${bare(gainBands.high)}`,
  high: `high: ${bare(gainBands.high)} or more`,
} as const;

/** The gain of a class in words. */
export function gainWords(learners: readonly TwoScores[]): GainWords {
  if (learners.length < 2)
    return { finding: 'Type both scores of at least two learners.', details: [] };
  if (learners.every(({ before }) => before === 1))
    return { finding: 'All was right before: there was nothing left to gain.', details: [] };
  const { before, after, gain, standardUncertainty, low, high } = classGain(
    learners,
    coverage.probability,
  );
  return {
    finding: `Your class gained ${bare(gain, standardUncertainty)}. That is ${BANDS[gainBand(gain)]}.`,
    details: [
      `${learners.length} learners: ${share(before)} right before, ${share(after)} right after.`,
      `Of what they could still learn, they learned ${share(gain)}.`,
      `With a class like this one, the gain would be between ${formatRange(low, high, 'ratio', 'metric')}, ${share(coverage.probability)} of the time.`,
    ],
  };
}

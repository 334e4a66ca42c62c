/** Means and standard deviations that NIST certifies, on data that lose digits in plain sums. */
import { mean, standardDeviation } from '../../../src/core/summary.ts';
import { type Answer, type Answers, printed, recomputed } from '../answer.ts';
import { numbersAt, type PublishedCase, valueAt } from '../cases.ts';

function readings({ inputs }: PublishedCase): readonly number[] {
  const digits = valueAt(inputs, 'digits');
  if (typeof digits === 'string') return Array.from(digits, Number);
  if (valueAt(inputs, 'generator') === undefined) return numbersAt(inputs, 'y');
  const pair = numbersAt(inputs, 'generator > thenRepeat500Times');
  const first = valueAt(inputs, 'generator > first') as number;
  return [first, ...Array.from({ length: 500 }, () => pair).flat()];
}

const bothOf =
  (relativeMean: number, relativeDeviation: number) =>
  (from: PublishedCase): readonly Answer[] => {
    const values = readings(from);
    const [centre, deviation] = [mean(values), standardDeviation(values)];
    const best = 'bestPossibleFromDoubles';
    return [
      printed('mean', 'mean', '', centre, { relative: relativeMean }),
      printed('standardDeviation', 'standard deviation', '', deviation, {
        relative: relativeDeviation,
      }),
      recomputed(`${best} > mean`, 'mean', '', centre, 1e-15),
      recomputed(`${best} > standardDeviation`, 'standard deviation', '', deviation, 1e-14),
    ];
  };

export const univariateAnswers: Answers = {
  'strd-michelso': bothOf(1e-12, 1e-12),
  'strd-numacc1': bothOf(1e-15, 1e-15),
  'strd-numacc3': bothOf(1e-15, 1e-8),
  'strd-pidigits': bothOf(1e-13, 1e-13),
  'strd-mavro': bothOf(1e-14, 1e-11),
  'strd-lew': bothOf(1e-13, 1e-13),
};

/** Scores of agreement. */
import { agreementNumber, zetaScore } from '../../../src/core/agreement.ts';
import { standardDeviation } from '../../../src/core/summary.ts';
import { type Answer, type Answers, printed, recomputed } from '../answer.ts';
import { inputReader, numbersAt, type PublishedCase, valueAt } from '../cases.ts';

function gears(from: PublishedCase): readonly Answer[] {
  const { inputs } = from;
  const batch = numbersAt(inputs, 'y_batch1');
  const all = (valueAt(inputs, 'allBatches') as readonly (readonly number[])[]).flat();
  const [laboratory, reference] = [2 * standardDeviation(batch), 2 * standardDeviation(all)];
  const wanted = { value: inputReader(from)('xref'), expanded: reference };
  const scores = batch.map((value) => agreementNumber({ value, expanded: laboratory }, wanted));
  const within = { absolute: 0.0005 };
  const first = scores.slice(0, 4);
  return [
    ...first.map((score, i) =>
      printed(`En_first_four > ${i}`, `score of gear ${i + 1}`, '', score, within),
    ),
    printed('Ulab_batch1', 'expanded uncertainty of batch 1', '', laboratory, within),
    printed('SD_all', 'sd of all gears', '', reference / 2, { decimals: 5 }),
    ...scores.map((score, i) =>
      recomputed(`En_batch1 > ${i}`, `score of gear ${i + 1}`, '', score, 1e-9),
    ),
    recomputed('Uref', 'expanded uncertainty of all', '', reference, 1e-9),
    recomputed('Ulab_batch1', 'expanded uncertainty of batch 1', '', laboratory, 1e-9),
  ];
}

function twoValues(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const result = (key: string) => ({
    value: n(`${key} > value`),
    standard: n(`${key} > u`),
    expanded: n('k') * n(`${key} > u`),
  });
  const [first, second] = [result('x'), result('X')];
  return [
    recomputed('En', 'agreement number', '', agreementNumber(first, second), 1e-12),
    recomputed('zeta', 'zeta score', '', zetaScore(first, second), 1e-12),
  ];
}

export const agreementAnswers: Answers = {
  'dataplot-iso13528-en': gears,
  'en-constructed-two-values': twoValues,
};

/** Theory beside measurement, and the two budgets, largest line first. */
import type { JSX } from 'preact';
import type { WorksheetContribution } from '../../core/worksheet.ts';
import { part } from '../kit/part.tsx';
import { MoreResults } from '../kit/Result.tsx';
import { Section } from '../kit/Section.tsx';
import { AGREES } from '../words/answer-words.ts';
import { budgetName } from '../words/budget-words.ts';
import { TheoryResults } from './TheoryResults.tsx';

interface BudgetProps {
  readonly id: string;
  readonly title: string;
  readonly lines: readonly WorksheetContribution[];
}

const Budget = part<BudgetProps>(({ id, title, lines }, sheet) => {
  const shown = sheet.shown();
  const largest = lines[0]?.contribution ?? 1;
  return (
    <table class="budget plain-table" data-budget={id}>
      <caption>{title}</caption>
      <thead class="visually-hidden">
        <tr>
          <th scope="col">From</th>
          <th scope="col">Standard uncertainty</th>
          <th scope="col">Drawn</th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ name, contribution }) => (
          <tr key={name}>
            <th scope="row">{budgetName(name)}</th>
            <td>{shown.quantity(contribution, 'stress')}</td>
            <td class="budget-bar">
              <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
                <rect width={Math.max(0, (100 * contribution) / largest)} height="10" />
              </svg>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
});

const Budgets = part((_, sheet) => {
  const [measured, predicted] = [sheet.result('measured'), sheet.result('predicted')];
  return (
    <>
      {measured?.ready && (
        <Budget
          id="measured"
          title="Uncertainty of the measured stress, largest first"
          lines={measured.contributions}
        />
      )}
      {predicted?.ready && (
        <Budget
          id="predicted"
          title="Uncertainty of the predicted stress, largest first"
          lines={predicted.contributions}
        />
      )}
    </>
  );
});

const Verdict = part((_, sheet) => {
  const agreement = sheet.result('agreement');
  return agreement?.ready ? AGREES[agreement.verdict] : null;
});

/** Part 6. */
export function ComparePart(): JSX.Element {
  return (
    <Section
      id="compare"
      says={<Verdict />}
      boxes={
        <p class="how">
          The screw predicts a range of stress; your readings measure one. They do not depend on
          each other, so you can compare them. If they do not agree, trust the readings and look at
          the screw: <a href="../lessons/theory-meets-measurement/">Theory meets measurement</a>{' '}
          lists the reasons.
        </p>
      }
      results={
        <>
          <TheoryResults />
          <MoreResults name="What makes them uncertain">
            <Budgets />
          </MoreResults>
        </>
      }
    />
  );
}

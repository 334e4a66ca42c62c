/** Theory beside measurement, and the two budgets, largest line first. */
import type { JSX } from 'preact';
import type { WorksheetContribution } from '../../core/worksheet.ts';
import { part } from '../kit/part.tsx';
import { MoreResults } from '../kit/Result.tsx';
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
            <th scope="row">{budgetName(name, shown, sheet.worksheet()?.tensioner.wrenchClass)}</th>
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
  const { quantity, load } = sheet.shown();
  const at = (torque: number) => ` at ${quantity(torque, load.name)}`;
  return (
    <>
      {measured?.ready && (
        <Budget
          id="measured"
          title={`Uncertainty of the measured stress${at(measured.topTorque)}, largest first`}
          lines={measured.contributions}
        />
      )}
      {predicted?.ready && (
        <Budget
          id="predicted"
          title={`Uncertainty of the predicted stress${at(predicted.operands.torque)}, largest first`}
          lines={predicted.contributions}
        />
      )}
    </>
  );
});

/** What the part comes to. */
export function CompareResults(): JSX.Element {
  return (
    <>
      <TheoryResults />
      <MoreResults name="What makes them uncertain">
        <Budgets />
      </MoreResults>
    </>
  );
}

/** All numbers of the board in a table: what the charts show, what waits, and the way off the board. */
import type { JSX } from 'preact';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { QuantityKind, UnitSystem } from '../../units/kinds.ts';
import { type Board, isMeasured, type Measured, type Row, rowsInOrder, type Waits } from './row.ts';

/** What the table is drawn from. */
export interface TableView {
  readonly board: Board;
  readonly system: UnitSystem;
  readonly remove: (row: Row) => void;
}

interface CellProps {
  readonly result: Measured | Waits;
  readonly kind: QuantityKind;
  readonly system: UnitSystem;
  readonly title: string;
}

function Cell({ result, kind, system, title }: CellProps): JSX.Element {
  if (!isMeasured(result))
    return (
      <td data-title={title} class="waits">
        {result.waits[system]}
      </td>
    );
  const { value, expanded } = result;
  return (
    <td data-title={title} class="steel">
      {formatQuantity(value, kind, system, { uncertainty: expanded })}
    </td>
  );
}

interface LineProps {
  readonly row: Row;
  readonly system: UnitSystem;
  readonly remove: (row: Row) => void;
}

function Line({ row, system, remove }: LineProps): JSX.Element {
  const { stress, efficiency, topTorque } = row;
  const isEqual = !isMeasured(stress) && !isMeasured(efficiency);
  return (
    <tr>
      <th scope="row">
        {row.name}
        <span class="label from"> {row.from}</span>
      </th>
      <td data-title="Top torque" class="hand">
        {topTorque === undefined ? '' : formatQuantity(topTorque, 'torque', system)}
      </td>
      <Cell title="Stress" result={stress} kind="stress" system={system} />
      {isEqual ? (
        <td />
      ) : (
        <Cell title="Efficiency" result={efficiency} kind="percent" system={system} />
      )}
      <td data-title="Measurement">{row.verdict}</td>
      <td class="no-print">
        <button
          class="button plain"
          type="button"
          aria-label={`Remove ${row.name}`}
          onClick={() => remove(row)}
        >
          Remove
        </button>
      </td>
    </tr>
  );
}

/** The table; ± is the 95 % interval. */
export function Table({ board, system, remove }: TableView): JSX.Element {
  return (
    <table class="board-table">
      <caption>All numbers, from the lowest stress up. ± is for 95 %.</caption>
      <thead>
        <tr>
          <th scope="col">Learner</th>
          <th scope="col">Top torque</th>
          <th scope="col">Stress</th>
          <th scope="col">Efficiency</th>
          <th scope="col">Measurement</th>
          <td class="no-print" />
        </tr>
      </thead>
      <tbody>
        {rowsInOrder(board).map((row) => (
          <Line key={row.id} row={row} system={system} remove={remove} />
        ))}
      </tbody>
    </table>
  );
}

/** The learner's own table: each row can be corrected or deleted. */
import { unitLabel } from '../../units/label.ts';
import { dialUnits, type RowView } from '../state/view.ts';
import { say } from '../words/say.ts';
import { handlingInWords } from '../words/series-words.ts';
import type { DeskProps } from './desk.ts';

interface RowProps {
  readonly row: RowView;
  readonly at: number;
  readonly desk: DeskProps;
}

const SLACK = { start: 'start, slack', letOff: 'let off' } as const;

function TableRow({ row, at, desk }: RowProps) {
  const { run, view } = desk;
  const torque = row.slack ? SLACK[row.slack] : say(row.torque, 'torque', view.bench.system);
  const trouble = row.refusal && `bench-row-${at}-trouble`;
  return (
    <tr>
      <th scope="row">{at + 1}</th>
      <td>{torque}</td>
      <td>
        <input
          class="box"
          type="text"
          inputMode="decimal"
          autocomplete="off"
          spellcheck={false}
          maxLength={60}
          value={row.dial}
          aria-label={`Dial, row ${at + 1}, ${torque}`}
          aria-invalid={trouble ? 'true' : undefined}
          aria-describedby={trouble}
          onInput={(event) => run({ do: 'correct', row: at, dial: event.currentTarget.value })}
        />
        {row.refusal && (
          <p class="refusal" id={trouble}>
            {row.refusal}
          </p>
        )}
      </td>
      <td class="row-tool">
        <button
          class="row-button"
          type="button"
          aria-label={`Delete row ${at + 1}`}
          onClick={() => run({ do: 'remove', row: at })}
        >
          Delete
        </button>
      </td>
    </tr>
  );
}

/** The table, series by series. */
export function Rows({ desk }: { readonly desk: DeskProps }) {
  const { rows, bench, face } = desk.view;
  if (rows.length === 0)
    return (
      <p class="no-print">
        No rows yet. Read the dial at each torque, and write it down: the table is yours.
      </p>
    );
  const numbered = rows.map((row, at) => ({ row, at }));
  return (
    <>
      <table class="readings bench-rows">
        <thead>
          <tr>
            <th scope="col">
              <span class="visually-hidden">Row</span>
            </th>
            <th scope="col">Torque</th>
            <th scope="col">Dial, {unitLabel('stretch', dialUnits(face))}</th>
            <th scope="col" class="row-tool">
              <span class="visually-hidden">Delete</span>
            </th>
          </tr>
        </thead>
        {bench.taken.map((taken) => {
          const own = numbered.filter(({ row }) => row.series === taken.attempt);
          return own.length === 0 ? null : (
            <tbody key={taken.attempt}>
              <tr class="bench-series">
                <th scope="rowgroup" colSpan={4}>
                  {handlingInWords(taken)}
                </th>
              </tr>
              {own.map(({ row, at }) => (
                <TableRow key={at} row={row} at={at} desk={desk} />
              ))}
            </tbody>
          );
        })}
      </table>
      {rows.some(({ slack }) => slack) && (
        <p class="hint">
          Start and let-off are not used for the line. Where they differ, the clamps or the bar have
          moved.
        </p>
      )}
    </>
  );
}

/** Several series in one table: the line over the row that begins one, and the button that starts another. */
import type { JSX } from 'preact';
import { mostRows } from '../../form/paths.ts';
import { focusSoon } from '../kit/focus-soon.ts';
import { idOf } from '../kit/ids.ts';
import { part } from '../kit/part.tsx';
import type { SheetView } from '../state/view.ts';
import { cellIn, isFilled, pathOf } from './columns.ts';

interface HeadProps {
  readonly row: number;
  readonly columns: number;
  readonly children: JSX.Element; // the box
}

/** The line over the first row of a series; it stays while its box is typed in, whatever stands there. */
export const SeriesHead = part<HeadProps>(({ row, columns, children }, sheet) => {
  const path = pathOf(row, 'series');
  const hold = () => {
    sheet.opened.value = path;
  };
  const release = () => {
    if (sheet.opened.peek() === path) sheet.opened.value = undefined;
  };
  const join = () => {
    sheet.run({ do: 'type', path, text: '' });
    document.getElementById(idOf(pathOf(row, sheet.shown().load.name)))?.focus(); // the button goes
  };
  return (
    <tr class="row-series" onFocusIn={hold} onFocusOut={release}>
      <td colSpan={columns}>
        <div>
          <label for={idOf(path)}>Series</label>
          {children}
          <span>, its own zero</span>
          <button class="button plain no-print" type="button" onClick={join}>
            Join to the rows above
          </button>
        </div>
      </td>
    </tr>
  );
});

/** The number after the highest that stands in the table; the first series needs none. */
function nextNumber(rows: readonly (readonly string[])[]): number {
  const numbers = rows.map((texts) => Number(cellIn(texts, 'series')));
  return Math.max(1, ...numbers.filter(Number.isInteger)) + 1;
}

/** Puts the cursor into the first row of a new series; of one that has been started and is empty still, into that. */
function start(sheet: Pick<SheetView, 'cells' | 'run' | 'shown'>): void {
  const rows = sheet.cells('readings');
  const isStarted = !isFilled(rows.at(-1) ?? []);
  const row = isStarted ? rows.length - 1 : rows.length;
  if (!isStarted)
    sheet.run({ do: 'type', path: pathOf(row, 'series'), text: `${nextNumber(rows)}` });
  focusSoon(pathOf(row, sheet.shown().load.name));
}

/** Starts another series, and says what it is good for. */
export const AnotherSeries = part((_, sheet) => {
  const count = sheet.rows('readings');
  return (
    <div class="another-series no-print needs-script">
      <button
        class="button"
        type="button"
        disabled={count === 0 || count >= mostRows('readings')}
        onClick={() => start(sheet)}
      >
        Start another series
      </button>
      <p class="hint">
        Two more series about halve the uncertainty: let the tension off, let the bar cool, set the
        dial anew, and come up again.
      </p>
    </div>
  );
});

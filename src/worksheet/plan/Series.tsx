/** The tables of the sheet to take along: what to set at each step, and cells for the pen. */
import type { JSX } from 'preact';
import { unitLabel } from '../../units/label.ts';
import type { Shown } from '../state/shown.ts';
import { settingTexts, settingUnit } from '../words/plan-words.ts';
import type { Planned } from './inputs.ts';

const ROWS_FOR_A_PEN = 12; // in a column; more are parted into two
const NOTES = 12; // lines

/** What stands in a column of a page: a series, or the second half of a long one. */
interface Column {
  readonly series: number;
  readonly from: number; // step
  readonly to: number;
}

/** The columns of each page, two at most: two series, or one whose rows would be too low. */
export function columnsOf({ plan: { series, steps } }: Planned): readonly (readonly Column[])[] {
  const all = Array.from({ length: series }, (_, at) => at + 1);
  const half = Math.ceil(steps / 2);
  if (steps > ROWS_FOR_A_PEN)
    return all.map((number) => [
      { series: number, from: 0, to: half },
      { series: number, from: half, to: steps },
    ]);
  const firsts = all.filter((number) => number % 2 === 1);
  const column = (number: number) => ({ series: number, from: 0, to: steps });
  return firsts.map((first) => [first, first + 1].filter((n) => n <= series).map(column));
}

interface SeriesProps {
  readonly column: Column;
  readonly planned: Planned;
  readonly shown: Shown;
}

function Series({ column, planned, shown }: SeriesProps): JSX.Element {
  const { series, from, to } = column;
  const settings = settingTexts(planned, shown);
  return (
    <table class="along-series">
      <caption>
        Series {series}
        {from > 0 && ', continued'}
      </caption>
      <thead>
        <tr>
          <th scope="col">Set to, {settingUnit(shown)}</th>
          <th scope="col">You read</th>
          <th scope="col">Dial, {unitLabel('stretch', shown.system)}</th>
          <th scope="col">Whole turns</th>
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: to - from }, (_, row) => {
          const setting = settings[from + row];
          return (
            <tr key={row}>
              {setting === undefined ? <td /> : <th scope="row">{setting}</th>}
              <td />
              <td />
              <td />
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** Room beside a series that stands alone. */
function Notes(): JSX.Element {
  return (
    <div class="along-notes">
      <b>Notes</b>
      {Array.from({ length: NOTES }, (_, line) => (
        <i key={line} />
      ))}
    </div>
  );
}

interface Props {
  readonly columns: readonly Column[];
  readonly planned: Planned;
  readonly shown: Shown;
}

/** The columns of one page. */
export function SeriesTables({ columns, planned, shown }: Props): JSX.Element {
  return (
    <div class="along-tables">
      {columns.map((column) => (
        <Series
          key={`${column.series} ${column.from}`}
          column={column}
          planned={planned}
          shown={shown}
        />
      ))}
      {columns.length === 1 && <Notes />}
    </div>
  );
}

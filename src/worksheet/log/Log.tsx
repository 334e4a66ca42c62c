/** The log of settings: a row for each day, the chart over time, and the way in and out as a table. */
import type { JSX } from 'preact';
import { mostRows } from '../../form/paths.ts';
import { BoxInput, BoxTrouble } from '../kit/Box.tsx';
import { ColumnTitles } from '../kit/ColumnTitles.tsx';
import { late } from '../kit/late.tsx';
import { part } from '../kit/part.tsx';
import { TableFile } from '../kit/TableFile.tsx';
import { WordsInput } from '../kit/WordsBox.tsx';
import type { LoadWords } from '../words/load-words.ts';
import { dayText, logEntries } from './entries.ts';

const columnsOf = ({ name, title }: LoadWords) =>
  [
    ['date', 'Date', undefined],
    [name, title, name],
    ['dial', 'Dial moved', 'stretch'],
    ['note', 'By, and what was seen', undefined],
  ] as const;

const LateChart = late(() => import('./OverTime.tsx'), 'OverTime');

const Entry = part<{ readonly row: number }>(({ row }, sheet): JSX.Element => {
  return (
    <tr>
      {columnsOf(sheet.shown().load).map(([cell, title]) => {
        const [path, Input] = [
          `log.${row}.${cell}`,
          cell === 'note' ? WordsInput : BoxInput,
        ] as const;
        return (
          <td key={cell}>
            <Input path={path} label={`${title}, entry ${row + 1}`} row={row} />
            <BoxTrouble path={path} />
          </td>
        );
      })}
    </tr>
  );
});

/** The log. */
export const Log = part((_, sheet) => {
  const cells = sheet.cells('log');
  const { load } = sheet.shown();
  const count = Math.min(cells.length + 1, mostRows('log'));
  const entries = logEntries(cells, sheet.shown().system, load.name);
  const addToday = () =>
    sheet.run({ do: 'type', path: `log.${count - 1}.date`, text: dayText(new Date()) });
  return (
    <>
      <p class="how">
        Write a line each time you check: the date as 2026-11-29, the {load.name}, how far the dial
        moved. The chart shows a drift before you feel it.
      </p>
      <table class="readings log">
        <caption class="visually-hidden">Log of settings</caption>
        <thead>
          <tr>
            <ColumnTitles columns={columnsOf(load)} />
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: count }, (_, row) => (
            <Entry row={row} key={row} />
          ))}
        </tbody>
      </table>
      <p class="no-print">
        <button class="button" type="button" onClick={addToday}>
          Add today
        </button>
      </p>
      {entries.length > 1 && <LateChart entries={entries} />}
      <TableFile list="log" name="log" />
    </>
  );
});

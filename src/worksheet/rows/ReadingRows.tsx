/** The loading series: rows to type into, one under the other, as a gauge with a keyboard plug fills them. */
import type { JSX } from 'preact';
import { type BoxPath, mostRows } from '../../form/paths.ts';
import { numberInSeries } from '../../form/series.ts';
import { BLOCK, blockOf, stretchesOf, unfold } from '../folds/blocks.ts';
import { ColumnTitles } from '../kit/ColumnTitles.tsx';
import { part } from '../kit/part.tsx';
import type { SheetView } from '../state/view.ts';
import { rowNotes } from '../words/row-words.ts';
import { type Column, columnsOf, pathOf, pathsOf } from './columns.ts';
import { thousandthsOn } from './marks.ts';
import { type Beside, Row } from './Row.tsx';
import { askedOn, carryUnit, noteTyping } from './unit-asked.ts';

const LEAST_ROWS = 10;
const NOTHING: readonly string[] = [];

function Head({ columns }: { readonly columns: readonly Column[] }): JSX.Element {
  return (
    <thead>
      <tr>
        <th scope="col">
          <span class="visually-hidden">Row</span>
        </th>
        <ColumnTitles columns={columns} />
        <td class="row-tool" />
      </tr>
    </thead>
  );
}

/** The sentences beside some boxes; the same nothing for each row that has none. */
function besides(sentences: Readonly<Record<string, string>>, paths: readonly BoxPath[]): Beside {
  return paths.some((path) => sentences[path]) ? paths.map((path) => sentences[path]) : NOTHING;
}

/** The refusals but for those of dial readings about whose unit is asked once for all. */
function unasked(
  refusals: Readonly<Record<string, string>>,
  rows: readonly number[],
): Readonly<Record<string, string>> {
  const asked = new Set<string>(rows.map((row) => pathOf(row, 'dial')));
  return Object.fromEntries(Object.entries(refusals).filter(([path]) => !asked.has(path)));
}

function notesOf({
  result,
  shown,
}: Pick<SheetView, 'result' | 'shown'>): Readonly<Record<number, string>> {
  const [rowReasons, series] = [result('rowReasons'), result('series')];
  return rowReasons && series ? rowNotes({ rowReasons, series }, shown()) : {};
}

interface BlockProps {
  readonly block: number;
  readonly count: number;
  readonly columns: readonly Column[];
}

interface RowsProps extends BlockProps {
  readonly texts: readonly (readonly string[])[];
  readonly thousandths: readonly number[]; // the rows that may count them, asked about once for all
}

/** The rows of one block. */
const Rows = part<RowsProps>(({ block, count, columns, texts, thousandths }, sheet) => {
  const { refusals, doubts } = sheet.troubles();
  const [told, opened, notes] = [sheet.notTaken(), sheet.opened.value, notesOf(sheet)];
  const [starts, asked] = [sheet.series(), askedOn(sheet)];
  const said = unasked(refusals, thousandths);
  return Array.from({ length: count }, (_, at) => {
    const row = block * BLOCK + at;
    const paths = pathsOf(row);
    return (
      <Row
        key={row}
        row={row}
        number={numberInSeries(row, starts)}
        columns={columns}
        texts={texts[at] ?? NOTHING}
        refusals={besides(said, paths)}
        doubts={besides(doubts, paths)}
        told={paths.some((path) => path === told?.path) ? told : undefined}
        note={notes[row]}
        asksUnit={row === asked?.rows[0]}
        asksThousandths={row === thousandths[0]}
        isSeries={starts.some((start) => start.row === row)}
        opened={paths.find((path) => path === opened)}
      />
    );
  });
});

/** `Rows 26 to 175`; where there are several series, from which row of which to which. */
function rowsName(first: number, count: number, sheet: Pick<SheetView, 'series' | 'shown'>) {
  const last = first + count - 1;
  if (sheet.series().length === 0) return `Rows ${first + 1} to ${last + 1}`;
  const { row } = sheet.shown();
  return `From ${row(first)} to ${row(last)}`;
}

/** One line for the rows of the blocks from one on that are folded; its button unfolds the first of them. */
const Folded = part<BlockProps>(({ block, count, columns }, sheet) => {
  const { refusals, doubts } = sheet.troubles();
  const first = block * BLOCK;
  const rows = Array.from({ length: count }, (_, at) => first + at);
  const troubled = rows.filter((row) =>
    pathsOf(row).some((path) => refusals[path] ?? doubts[path]),
  );
  return (
    <tr>
      <td colSpan={columns.length + 2}>
        <button
          class="button plain"
          type="button"
          data-folded={block}
          data-folded-to={blockOf(first + count - 1)}
          onClick={() => unfold(sheet, block)}
        >
          {rowsName(first, count, sheet)}
          {troubled.length > 0 && `, ${troubled.length} with a remark`}: show
          {count > BLOCK && ` the next ${BLOCK}`}
        </button>
      </td>
    </tr>
  );
});

const pathIn = ({ target }: Event): string | undefined =>
  target instanceof HTMLInputElement ? target.dataset['path'] : undefined;

/** All rows, always one empty one at the end. */
export const ReadingRows = part((_, sheet) => {
  const filled = sheet.cells('readings');
  const columns = columnsOf(sheet);
  const count = Math.min(Math.max(LEAST_ROWS, filled.length + 1), mostRows('readings'));
  const stretches = stretchesOf(blockOf(count - 1), sheet.unfolded.value);
  const thousandths = thousandthsOn(sheet).map(([row]) => row);
  return (
    <table
      class="readings"
      onFocusIn={(event) => noteTyping(sheet, pathIn(event))}
      onFocusOut={() => noteTyping(sheet, undefined)}
      onChange={(event) => carryUnit(sheet, pathIn(event))}
    >
      <caption class="visually-hidden">
        Loading series: {sheet.shown().load.name} and dial, row by row
      </caption>
      <Head columns={columns} />
      {stretches.map(({ block, last, isFolded }) => {
        const start = block * BLOCK;
        const end = Math.min((last + 1) * BLOCK, count);
        const same = { block, columns, count: end - start };
        return (
          <tbody key={block}>
            {isFolded ? (
              <Folded {...same} />
            ) : (
              <Rows {...same} texts={filled.slice(start, end)} thousandths={thousandths} />
            )}
          </tbody>
        );
      })}
    </table>
  );
});

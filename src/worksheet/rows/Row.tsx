/** One row of the readings: its boxes, what is wrong or odd about them, and why it is not used. */
import type { JSX } from 'preact';
import type { BoxPath } from '../../form/paths.ts';
import { inputOf, Trouble } from '../kit/Box.tsx';
import { NotTakenNote } from '../kit/NotTaken.tsx';
import { part } from '../kit/part.tsx';
import type { NotTaken, SheetView } from '../state/view.ts';
import { type Column, cellIn, isFilled, pathOf, pathsOf } from './columns.ts';
import { ThousandthsAsked } from './MarksAsked.tsx';
import { SeriesHead } from './Series.tsx';
import { ReasonLine, StrikeButton } from './StruckRow.tsx';
import { UnitAsked } from './UnitAsked.tsx';

/** The sentences beside the boxes of a row, in the order of its paths. */
export type Beside = readonly (string | undefined)[];

interface RowProps {
  readonly row: number;
  readonly number: number; // within its series, from 1 on
  readonly columns: readonly Column[];
  readonly texts: readonly string[];
  readonly refusals: Beside;
  readonly doubts: Beside;
  readonly told: NotTaken | undefined;
  readonly note: string | undefined; // why it is not used
  readonly isSeries: boolean; // a series begins here
  readonly asksUnit: boolean; // of its column
  readonly asksThousandths: boolean; // of the dial's
  readonly opened: BoxPath | undefined; // the box of it that is open though nothing stands in it
}

/** The box of one cell. */
function cellBox(props: RowProps, sheet: SheetView, name: Column[0], label?: string): JSX.Element {
  const { row, texts, refusals, doubts } = props;
  const path = pathOf(row, name);
  const at = pathsOf(row).indexOf(path);
  return inputOf({ path, label, row }, sheet, cellIn(texts, name), refusals[at], doubts[at]);
}

/** What stands under the row. */
function Below(props: RowProps, sheet: SheetView): JSX.Element | null {
  const { row, columns, refusals, doubts, told, note, asksUnit, asksThousandths } = props;
  const troubled = pathsOf(row)
    .map((path, at) => ({ path, refusal: refusals[at], doubt: doubts[at] }))
    .filter(({ refusal, doubt }) => refusal ?? doubt);
  const isAsked = asksUnit || asksThousandths;
  if (!told && note === undefined && troubled.length === 0 && !isAsked) return null;
  return (
    <tr class="row-trouble">
      <td />
      <td colSpan={columns.length + 1}>
        {note && !refusals.some(Boolean) && <p class="hint">{note}</p>}
        {troubled.map((trouble) => (
          <Trouble key={trouble.path} {...trouble} />
        ))}
        {asksUnit && <UnitAsked />}
        {asksThousandths && <ThousandthsAsked />}
        {told && <NotTakenNote told={told} dismiss={() => sheet.tell(undefined)} />}
      </td>
    </tr>
  );
}

/** The row with the lines over and under it. */
export const Row = part<RowProps>((props, sheet) => {
  const { row, number, columns, texts, isSeries, opened } = props;
  const called = sheet.shown().row(row);
  const [series, struck] = [pathOf(row, 'series'), pathOf(row, 'struck')];
  const isStruck = cellIn(texts, 'struck').trim() !== '';
  const isOpen = opened === struck;
  return (
    <>
      {(isSeries || opened === series) && (
        <SeriesHead row={row} columns={columns.length + 2}>
          {cellBox(props, sheet, 'series')}
        </SeriesHead>
      )}
      <tr class={isStruck ? 'is-struck' : undefined}>
        <th scope="row">{number}</th>
        {columns.map(([name, title]) => (
          <td key={name}>
            {cellBox(props, sheet, name, `${title}, ${called}${isStruck ? ', struck out' : ''}`)}
          </td>
        ))}
        <td class="row-tool">
          {(isStruck || isFilled(texts)) && (
            <StrikeButton row={row} isStruck={isStruck} isOpen={isOpen} />
          )}
        </td>
      </tr>
      {(isStruck || isOpen) && (
        <ReasonLine path={struck} columns={columns.length + 1}>
          {cellBox(props, sheet, 'struck')}
        </ReasonLine>
      )}
      {Below(props, sheet)}
    </>
  );
});

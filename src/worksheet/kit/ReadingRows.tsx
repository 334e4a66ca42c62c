/** The loading series: rows to type into, one under the other, as a gauge with a keyboard plug fills them. */
import type { JSX, TargetedClipboardEvent } from 'preact';
import type { ReadingText } from '../../form/text.ts';
import { MOST_ROWS } from '../../form/text.ts';
import { sheetView } from '../state/view.ts';
import { BoxInput, BoxTrouble, Unit } from './Box.tsx';

const LEAST_ROWS = 10;
const SEVERAL_CELLS = /[\t;\n]\s*\S/; // a single one goes into its box as it is

const COLUMNS = [
  ['torque', 'Torque', 'torque'],
  ['dial', 'Dial shows', 'stretch'],
  ['wholeTurns', 'Turns of the hand', undefined],
  ['turns', 'Turns of the screw', undefined],
] as const satisfies readonly (readonly [
  keyof ReadingText,
  string,
  'torque' | 'stretch' | undefined,
])[];

function Head(): JSX.Element {
  return (
    <thead>
      <tr>
        <th scope="col">
          <span class="visually-hidden">Row</span>
        </th>
        {COLUMNS.map(([name, title, kind]) => (
          <th scope="col" key={name}>
            {title}
            {kind && (
              <span class="unit">
                {' '}
                <Unit kind={kind} />
              </span>
            )}
          </th>
        ))}
      </tr>
    </thead>
  );
}

function Row({ row }: { readonly row: number }): JSX.Element {
  const { refusals, doubts } = sheetView();
  const paths = COLUMNS.map(([name]) => `readings.${row}.${name}`);
  const troubled = paths.filter((path) => refusals[path] ?? doubts[path]);
  return (
    <>
      <tr>
        <th scope="row">{row + 1}</th>
        {COLUMNS.map(([name, title], column) => {
          const path = paths[column] ?? '';
          return (
            <td key={name}>
              <BoxInput path={path} label={`${title}, row ${row + 1}`} row={row} />
            </td>
          );
        })}
      </tr>
      {troubled.length > 0 && (
        <tr class="row-trouble">
          <td />
          <td colSpan={COLUMNS.length}>
            {troubled.map((path) => (
              <BoxTrouble path={path} key={path} />
            ))}
          </td>
        </tr>
      )}
    </>
  );
}

/** All rows, always one empty one at the end. */
export function ReadingRows(): JSX.Element {
  const { text, paste } = sheetView();
  const count = Math.min(Math.max(LEAST_ROWS, text.readings.length + 1), MOST_ROWS.readings);
  const onPaste = async (event: TargetedClipboardEvent<HTMLTableElement>) => {
    const { path } = (event.target as HTMLElement).dataset;
    const [, row, column] = path?.split('.') ?? [];
    const pasted = event.clipboardData?.getData('text/plain') ?? '';
    if (!SEVERAL_CELLS.test(pasted) || row === undefined || column === undefined) return;
    event.preventDefault();
    const { pastedTable } = await import('../../form/pasted-table.ts');
    paste(Number(row), column as keyof ReadingText, pastedTable(pasted));
  };
  return (
    <table class="readings" onPaste={onPaste}>
      <caption class="visually-hidden">Loading series: torque and dial, row by row</caption>
      <Head />
      <tbody>
        {Array.from({ length: count }, (_, row) => (
          <Row row={row} key={row} />
        ))}
      </tbody>
    </table>
  );
}

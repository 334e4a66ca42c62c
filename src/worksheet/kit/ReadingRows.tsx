/** The loading series: rows to type into, one under the other, as a gauge with a keyboard plug fills them. */
import type { JSX } from 'preact';
import { type BoxPath, type CellOf, mostRows } from '../../form/paths.ts';
import type { NotTaken } from '../state/view.ts';
import { inputOf, Trouble, Unit } from './Box.tsx';
import { NotTakenNote } from './NotTaken.tsx';
import { part } from './part.tsx';

const LEAST_ROWS = 10;
const NOTHING: readonly string[] = [];

const COLUMNS = [
  ['torque', 'Torque', 'torque'],
  ['dial', 'Dial shows', 'stretch'],
  ['wholeTurns', 'Turns of the hand', undefined],
  ['turns', 'Turns of the screw', undefined],
] as const satisfies readonly (readonly [
  CellOf<'readings'>,
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

const pathsOf = (row: number): readonly BoxPath[] =>
  COLUMNS.map(([name]): BoxPath => `readings.${row}.${name}`);

type Beside = readonly (string | undefined)[];

/** The sentences beside some boxes; the same nothing for each row that has none. */
function besides(sentences: Readonly<Record<string, string>>, paths: readonly BoxPath[]): Beside {
  return paths.some((path) => sentences[path]) ? paths.map((path) => sentences[path]) : NOTHING;
}

interface RowProps {
  readonly row: number;
  readonly texts: readonly string[];
  readonly refusals: Beside;
  readonly doubts: Beside;
  readonly told: NotTaken | undefined;
}

const Row = part<RowProps>(({ row, texts, refusals, doubts, told }, sheet) => {
  const troubles = pathsOf(row).map((path, i) => ({
    path,
    refusal: refusals[i],
    doubt: doubts[i],
  }));
  const cells = troubles.map(({ path, refusal, doubt }, i) => {
    const label = `${COLUMNS[i]?.[1]}, row ${row + 1}`;
    const input = inputOf({ path, label, row }, sheet, texts[i] ?? '', refusal, doubt);
    return <td key={path}>{input}</td>;
  });
  const troubled = troubles.filter(({ refusal, doubt }) => refusal ?? doubt);
  return (
    <>
      <tr>
        <th scope="row">{row + 1}</th>
        {cells}
      </tr>
      {(told || troubled.length > 0) && (
        <tr class="row-trouble">
          <td />
          <td colSpan={COLUMNS.length}>
            {troubled.map((trouble) => (
              <Trouble key={trouble.path} {...trouble} />
            ))}
            {told && <NotTakenNote told={told} dismiss={() => sheet.tell(undefined)} />}
          </td>
        </tr>
      )}
    </>
  );
});

/** All rows, always one empty one at the end. */
export const ReadingRows = part((_, sheet) => {
  const [filled, { refusals, doubts }] = [sheet.cells('readings'), sheet.troubles()];
  const count = Math.min(Math.max(LEAST_ROWS, filled.length + 1), mostRows('readings'));
  const told = sheet.notTaken();
  return (
    <table class="readings">
      <caption class="visually-hidden">Loading series: torque and dial, row by row</caption>
      <Head />
      <tbody>
        {Array.from({ length: count }, (_, row) => {
          const paths = pathsOf(row);
          return (
            <Row
              key={row}
              row={row}
              texts={filled[row] ?? NOTHING}
              refusals={besides(refusals, paths)}
              doubts={besides(doubts, paths)}
              told={paths.some((path) => path === told?.path) ? told : undefined}
            />
          );
        })}
      </tbody>
    </table>
  );
});

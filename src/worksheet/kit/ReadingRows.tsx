/** The loading series: rows to type into, one under the other, as a gauge with a keyboard plug fills them. */
import type { JSX } from 'preact';
import { type BoxPath, type CellOf, mostRows } from '../../form/paths.ts';
import { BLOCK, blockOf, unfold } from '../state/blocks.ts';
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

interface BlockProps {
  readonly block: number;
  readonly count: number;
  readonly texts: readonly (readonly string[])[];
}

/** The rows of one block. */
const Rows = part<BlockProps>(({ block, count, texts }, sheet) => {
  const { refusals, doubts } = sheet.troubles();
  const told = sheet.notTaken();
  return Array.from({ length: count }, (_, at) => {
    const row = block * BLOCK + at;
    const paths = pathsOf(row);
    return (
      <Row
        key={row}
        row={row}
        texts={texts[at] ?? NOTHING}
        refusals={besides(refusals, paths)}
        doubts={besides(doubts, paths)}
        told={paths.some((path) => path === told?.path) ? told : undefined}
      />
    );
  });
});

/** One line for the rows of a block that is folded. */
const Folded = part<Omit<BlockProps, 'texts'>>(({ block, count }, sheet) => {
  const { refusals, doubts } = sheet.troubles();
  const rows = Array.from({ length: count }, (_, at) => block * BLOCK + at);
  const troubled = rows.filter((row) =>
    pathsOf(row).some((path) => refusals[path] ?? doubts[path]),
  );
  return (
    <tr>
      <td colSpan={COLUMNS.length + 1}>
        <button
          class="button plain"
          type="button"
          data-folded={block}
          onClick={() => unfold(sheet, block)}
        >
          Rows {block * BLOCK + 1} to {block * BLOCK + count}
          {troubled.length > 0 && `, ${troubled.length} with a remark`}: show
        </button>
      </td>
    </tr>
  );
});

/** All rows, always one empty one at the end. */
export const ReadingRows = part((_, sheet) => {
  const filled = sheet.cells('readings');
  const count = Math.min(Math.max(LEAST_ROWS, filled.length + 1), mostRows('readings'));
  const blocks = blockOf(count - 1) + 1;
  const unfolded = sheet.unfolded.value;
  return (
    <table class="readings">
      <caption class="visually-hidden">Loading series: torque and dial, row by row</caption>
      <Head />
      {Array.from({ length: blocks }, (_, block) => {
        const start = block * BLOCK;
        const texts = filled.slice(start, start + BLOCK);
        const rows = Math.min(BLOCK, count - start);
        const isDrawn = block === 0 || block >= blocks - 2 || unfolded.has(block);
        return (
          <tbody key={block}>
            {isDrawn ? (
              <Rows block={block} count={rows} texts={texts} />
            ) : (
              <Folded block={block} count={rows} />
            )}
          </tbody>
        );
      })}
    </table>
  );
});

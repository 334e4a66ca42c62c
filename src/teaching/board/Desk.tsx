/** The board: what was brought, the class in charts and words, and all numbers. */
import type { ComponentType, JSX } from 'preact';
import type { UnitSystem } from '../../units/kinds.ts';
import { Bringing, type BringingView } from './Bringing.tsx';
import type { ChartsView } from './Charts.tsx';
import { type Board, type LeftOut, measuredRows, type Row } from './row.ts';
import { spreadWords } from './spread-words.ts';
import { Table } from './Table.tsx';

const MOST_NAMED = 12;

/** What the board is drawn from. */
export interface DeskView extends BringingView {
  readonly board: Board;
  readonly system: UnitSystem;
  readonly said: string;
  readonly width: number; // pixels for one chart
  readonly Charts: ComponentType<ChartsView> | undefined;
  readonly remove: (row: Row) => void;
  readonly clear: () => void;
}

function NotTaken({ leftOut }: { readonly leftOut: readonly LeftOut[] }): JSX.Element | null {
  if (leftOut.length === 0) return null;
  const more = leftOut.length - MOST_NAMED;
  return (
    <section class="board-left no-print">
      <h2>Left out</h2>
      <ul>
        {leftOut.slice(0, MOST_NAMED).map(({ from, why }, at) => (
          <li key={`${at + 1} ${from}`}>
            <span class="board-from">{from.slice(0, 100)}</span>: {why}
          </li>
        ))}
        {more > 0 && <li>{more} more, for reasons like these.</li>}
      </ul>
    </section>
  );
}

function Class(view: DeskView): JSX.Element {
  const { board, system, width, Charts, remove, clear } = view;
  const rows = measuredRows(board);
  const { finding, details } = spreadWords(rows, system);
  return (
    <section class="board-class" aria-label="The class">
      <p class="board-says">{finding}</p>
      {rows.length > 0 && (
        <p class="label">
          Point and bar: a learner’s result with its 95 % interval. Shaded: one standard deviation
          either way.
        </p>
      )}
      <div class="board-charts">
        {Charts && rows.length > 0 && <Charts rows={rows} system={system} width={width} />}
      </div>
      {details.length > 0 && (
        <ul class="board-details">
          {details.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      <Table board={board} system={system} remove={remove} />
      <p class="board-ends no-print">
        <button class="button" type="button" onClick={() => print()}>
          Print the board
        </button>
        <button class="button plain" type="button" onClick={clear}>
          Clear the board
        </button>
      </p>
    </section>
  );
}

/** The whole. */
export function Desk(view: DeskView): JSX.Element {
  return (
    <>
      <Bringing {...view} />
      <p class="board-said no-print" role="status">
        {view.said}
      </p>
      <NotTaken leftOut={view.board.leftOut} />
      {view.board.rows.length > 0 && <Class {...view} />}
    </>
  );
}

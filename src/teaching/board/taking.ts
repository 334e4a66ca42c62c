/**
 * Takes many files or links one after the other, and lets the page breathe between them.
 * Units: milliseconds.
 * Source: definition.
 */

import type { Found } from './reading.ts';
import { type Board, EMPTY, type LeftOut, MOST, withSheet } from './row.ts';

const BREATH = 40; // ms of work, after which the page may draw and answer
const NOT_WORKED_OUT = 'Its numbers could not be worked out.';

/** Something to be looked at: what it is called, and how it is read. */
export interface Item {
  readonly from: string;
  readonly read: (room: number) => Promise<Found>;
}

/** What became of the items; `refused` are those that gave no sheet. */
export interface Taken {
  readonly board: Board;
  readonly refused: readonly number[]; // places
}

const breathe = () => new Promise<void>((go) => setTimeout(go));

const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

/** What is told of items that nobody looked at. */
function untouched(count: number): readonly LeftOut[] {
  if (count === 0) return [];
  const from = plural(count, 'more file or link', 'more files or links');
  const why = `Not read: the board takes ${MOST.sheets} sheets, and ${MOST.atOnce} files at once.`;
  return [{ from, why }];
}

async function foundBy({ from, read }: Item, room: number): Promise<Found> {
  try {
    return await read(room);
  } catch {
    return { sheets: [], leftOut: [{ from, why: NOT_WORKED_OUT }] };
  }
}

/** The board with all items that it takes. Never throws: one item's fault is told, and the others go on. */
export async function taken(before: Board, items: readonly Item[]): Promise<Taken> {
  let board: Board = { ...EMPTY, rows: before.rows };
  const refused: number[] = [];
  let [at, rested] = [0, performance.now()];
  for (; at < Math.min(items.length, MOST.atOnce); at += 1) {
    const room = MOST.sheets - board.rows.length;
    if (room === 0) break;
    const { sheets, leftOut } = await foundBy(items[at] as Item, room);
    if (sheets.length === 0) refused.push(at);
    board = sheets.reduce(withSheet, { ...board, leftOut: [...board.leftOut, ...leftOut] });
    if (performance.now() - rested > BREATH) {
      await breathe();
      rested = performance.now();
    }
  }
  const rest = untouched(items.length - at);
  for (let place = at; place < items.length; place += 1) refused.push(place);
  return { board: { ...board, leftOut: [...rest, ...board.leftOut] }, refused };
}

/** What has been done, in words. */
export function toldOf(before: Board, { board }: Pick<Taken, 'board'>): string {
  const more = board.rows.length - before.rows.length;
  const added = plural(more, 'sheet was added', 'sheets were added');
  const left = board.leftOut.length;
  if (left === 0) return `${added}.`;
  return `${added}. ${plural(left, 'was', 'were')} left out: see below.`;
}

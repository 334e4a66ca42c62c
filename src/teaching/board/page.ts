/** The class board comes alive: takes files and links, draws, keeps nothing. */
import { effect, type Signal, signal } from '@preact/signals-core';
import { type ComponentType, h, render } from 'preact';
import { announceLive } from '../../live/announce.ts';
import { fetchedLater, NOT_ARRIVED } from '../../live/fetched-later.ts';
import { unitSystem } from '../../live/unit-system.ts';
import type { ChartsView } from './Charts.tsx';
import { Desk } from './Desk.tsx';
import { fetchEarly } from './early.ts';
import { type Board, EMPTY, measuredRows, type Row } from './row.ts';
import { type Item, taken, toldOf } from './taking.ts';

const GAP = 32; // pixels between two charts beside each other
const LEAST = 400; // pixels for each of them, or they stand one under the other

const reader = fetchedLater(() => import('./reading.ts'));
const charts = fetchedLater(() => import('./Charts.tsx'));

/** What the page holds. */
interface Store {
  readonly board: Signal<Board>;
  readonly links: Signal<string>;
  readonly said: Signal<string>;
  readonly isBusy: Signal<boolean>;
  readonly width: Signal<number>;
  readonly Charts: Signal<ComponentType<ChartsView> | undefined>;
}

const createStore = (): Store => ({
  board: signal(EMPTY),
  links: signal(''),
  said: signal(''),
  isBusy: signal(false),
  width: signal(LEAST),
  Charts: signal(undefined),
});

/** Takes items onto the board; gives the places of those that gave no sheet. */
async function take(store: Store, items: readonly Item[]): Promise<readonly number[]> {
  const before = store.board.peek();
  store.isBusy.value = true;
  store.said.value = 'Reading.';
  try {
    const found = await taken(before, items);
    if (measuredRows(found.board).length > 0) store.Charts.value ??= (await charts.fetch()).Charts;
    store.board.value = found.board;
    store.said.value = toldOf(before, found);
    return found.refused;
  } catch {
    store.said.value = NOT_ARRIVED;
    return items.map((_, at) => at);
  } finally {
    store.isBusy.value = false;
  }
}

/** Takes something with the part that reads it; nothing is lost where that part does not arrive. */
async function takeWith(
  store: Store,
  itemsBy: (read: Awaited<ReturnType<typeof reader.fetch>>) => readonly Item[],
): Promise<readonly number[] | undefined> {
  if (store.isBusy.peek()) return undefined;
  try {
    return await take(store, itemsBy(await reader.fetch()));
  } catch {
    store.said.value = NOT_ARRIVED;
    return undefined;
  }
}

async function takeFiles(store: Store, files: readonly File[]): Promise<void> {
  if (files.length === 0) return;
  await takeWith(store, ({ foundInFile }) =>
    files.map((file) => ({ from: file.name, read: (room) => foundInFile(file, room) })),
  );
}

/** Takes the pasted links; those that gave no sheet stay in the box. */
async function takeLinks(store: Store): Promise<void> {
  const text = store.links.peek();
  const lines = text.split(/[\r\n]+/).filter((line) => line.trim() !== '');
  const refused = await takeWith(store, ({ foundInLink }) =>
    lines.map((line, at) => {
      const from = `link ${at + 1}`;
      return { from, read: () => foundInLink(line.trim(), from) };
    }),
  );
  if (refused && store.links.peek() === text)
    store.links.value = refused.map((at) => lines[at]).join('\n');
}

function remove({ board, said }: Store, { id, name }: Row): void {
  const { rows, leftOut } = board.peek();
  board.value = { rows: rows.filter((row) => row.id !== id), leftOut };
  said.value = `${name} is off the board.`;
  document.getElementById('board-files')?.focus();
}

function clear({ board, said }: Store): void {
  board.value = EMPTY;
  said.value = 'The board is empty.';
  document.getElementById('board-files')?.focus();
}

function draw(store: Store, place: HTMLElement): void {
  effect(() => {
    const { board, links, said, isBusy, width, Charts } = store;
    const view = {
      board: board.value,
      links: links.value,
      said: said.value,
      isBusy: isBusy.value,
      width: width.value,
      Charts: Charts.value,
      system: unitSystem.value,
      typeLinks: (text: string) => {
        links.value = text;
      },
      takeFiles: (files: readonly File[]) => void takeFiles(store, files),
      takeLinks: () => void takeLinks(store),
      remove: (row: Row) => remove(store, row),
      clear: () => clear(store),
    };
    render(h(Desk, view), place);
  });
}

/** Takes files that are dropped anywhere on the page: elsewhere the browser would open them in its place. */
function followDrops(store: Store, page: Document): void {
  page.addEventListener('dragover', (event) => {
    if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
  });
  page.addEventListener('drop', (event) => {
    const files = [...(event.dataTransfer?.files ?? [])];
    if (files.length === 0) return;
    event.preventDefault();
    void takeFiles(store, files);
  });
}

/** Gives each chart half of the room where that is enough, and all of it elsewhere. */
function fit({ width }: Store, place: HTMLElement): void {
  const measure = () => {
    const half = (place.clientWidth - GAP) / 2;
    width.value = Math.floor(half >= LEAST ? half : place.clientWidth);
  };
  measure();
  new ResizeObserver(measure).observe(place);
}

/** Starts the board; a page without its place stays the page that was built. */
export function startBoard(page: Document): void {
  const place = page.querySelector<HTMLElement>('[data-board]');
  if (!place) return;
  const store = createStore();
  place.replaceChildren();
  fetchEarly(page, [reader, charts]);
  followDrops(store, page);
  fit(store, place);
  draw(store, place);
  announceLive();
}

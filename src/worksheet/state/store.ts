/**
 * The worksheet page's one store: which sheet is open, and its history. The project changes by commands alone;
 * everything else is computed, and the shelf, tabs and results follow by themselves.
 */
import {
  batch,
  computed,
  effect,
  type ReadonlySignal,
  type Signal,
  signal,
} from '@preact/signals-core';
import type { WorksheetDocument } from '../../form/document.ts';
import { mostLetters } from '../../form/field.ts';
import { fieldAt } from '../../form/paths.ts';
import { isBlank, typedAt, withTyped } from '../../form/typed.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import type { SheetRecord } from '../io/database.ts';
import { newId, type Shelf, setOpen } from '../io/shelf.ts';
import { documentFrom, Keeper, type ReadRecord } from '../keeping/keeper.ts';
import { changesBetween, untouched } from '../keeping/merging.ts';
import { begun, done, everywhere, type History, redone, settled, undone } from './history.ts';
import { apply, type Command, emptyProject, inSystem, type Project } from './project.ts';
import { sharing } from './sharing.ts';

/** A sheet as a list shows it. */
export interface ShelfItem {
  readonly id: string;
  readonly label: string;
}

/** A sheet in the bin. */
export interface Binned extends ShelfItem {
  readonly project: Project;
  readonly removedAt: number; // ms since 1970
}

/** What the page's parts share. */
export interface SheetStore {
  readonly id: Signal<string>;
  readonly history: Signal<History>;
  readonly project: ReadonlySignal<Project>;
  /** Every sheet there is, by id: the open one once something is typed. */
  readonly sheets: Map<string, Project>;
  /** The same as a list, by name. */
  readonly kept: Signal<readonly ShelfItem[]>;
  readonly bin: Signal<readonly Binned[]>;
  /** What lies on the shelf and is no sheet that this page can read: left there, as it is. */
  readonly unread: Signal<readonly SheetRecord[]>;
  readonly shelf: Shelf;
  readonly keeper: Keeper;
}

/** A store with an empty sheet; `read` reads what lies on the shelf. */
export function createSheetStore(
  shelf: Shelf,
  system: UnitSystem,
  read: ReadRecord,
  told: (id: string, isMerged: boolean) => void = () => {},
): SheetStore {
  const history = signal(begun(emptyProject(system)));
  const keeper = new Keeper(shelf, read, ({ id }, was, is) => {
    told(id, absorb(store, id, was, is));
  });
  const store: SheetStore = {
    id: signal(newId()),
    history,
    project: computed(() => history.value.present),
    sheets: new Map(),
    kept: signal([]),
    bin: signal([]),
    unread: signal([]),
    shelf,
    keeper,
  };
  effect(() => keep(store, store.project.value));
  return store;
}

/** Changes the project of the open sheet. */
export function run({ history }: SheetStore, command: Command, at = performance.now()): void {
  history.value = done(history.value, command, at);
}

/** The box that was typed into is left: its step is done. */
export function settle({ history }: SheetStore): void {
  history.value = settled(history.value);
}

/** Goes one step back or on, and gives the command whose step it was; undefined at the end. */
export function step({ history }: SheetStore, way: 'undo' | 'redo'): Command | undefined {
  const { past, future } = history.value;
  history.value = way === 'undo' ? undone(history.value) : redone(history.value);
  return (way === 'undo' ? past : future)[0]?.command;
}

/** The project of a document, in a unit system. */
export const projectFrom = (document: WorksheetDocument, system: UnitSystem): Project =>
  apply(emptyProject(system), { do: 'load', document });

/** Whether anything has been done to the open sheet since it was opened. */
export function isChanged({ history }: SheetStore): boolean {
  const { past, future } = history.peek();
  return past.length + future.length > 0;
}

/** Keeps the open sheet as it stands, once something has been done to it. */
function keep(store: SheetStore, project: Project): void {
  const id = store.id.peek();
  const isNew = !store.sheets.has(id);
  if (!isChanged(store) || (isBlank(project.typed) && isNew)) return;
  if (isNew) setOpen(id);
  putSheet(store, id, project);
}

/** A sheet of this visit: listed, and to be kept. */
function putSheet(store: SheetStore, id: string, project: Project): void {
  store.sheets.set(id, project);
  store.keeper.want(id, { project });
  list(store);
}

/** Lists the sheets anew. */
export function list({ sheets, kept }: SheetStore): void {
  const items = [...sheets].map(([id, { typed }]) => ({ id, label: typedAt(typed, 'label') }));
  items.sort((a, b) => a.label.localeCompare(b.label));
  kept.value = sharing(kept.peek(), items);
}

/** Puts a sheet on the table. */
export function openSheet(store: SheetStore, id: string): void {
  const project = store.sheets.get(id);
  if (!project) return;
  batch(() => {
    store.history.value = begun(inSystem(project, store.project.value.system));
    store.id.value = id;
    list(store);
  });
  setOpen(id);
}

/** What a project says, whatever units it is shown in. */
export const saidBy = (project: Project) =>
  JSON.stringify(documentFrom(inSystem(project, 'metric')));

/** Adds a sheet and opens it; one that says the same already is only opened. */
export function addSheet(store: SheetStore, document: WorksheetDocument): void {
  const project = projectFrom(document, store.project.value.system);
  const twin = [...store.sheets].find(([, known]) => saidBy(known) === saidBy(project));
  const id = twin?.[0] ?? newId();
  if (!twin) putSheet(store, id, project);
  openSheet(store, id);
}

const COPY = ', a copy';

/** Adds the open sheet once more under a name that says so, and opens it. */
export function copyOpen(store: SheetStore): void {
  const project = store.project.value;
  const room = mostLetters(fieldAt('label')) - COPY.length;
  const label = typedAt(project.typed, 'label').slice(0, room) + COPY;
  addSheet(store, documentFrom({ ...project, typed: withTyped(project.typed, 'label', label) }));
}

/** An empty sheet; it is kept once something is typed. */
export function newSheet(store: SheetStore): void {
  batch(() => {
    store.history.value = begun(emptyProject(store.project.value.system));
    store.id.value = newId();
    list(store);
  });
}

/** Takes a sheet off the list and puts it into the bin, the latest on top. */
export function toBin(store: SheetStore, id: string, project: Project, removedAt: number): void {
  const binned = { id, label: typedAt(project.typed, 'label'), project, removedAt };
  const others = store.bin.value.filter((each) => each.id !== id);
  store.bin.value = [binned, ...others].sort((a, b) => b.removedAt - a.removedAt);
  store.sheets.delete(id);
}

/** Puts the open sheet into the bin, and opens another. */
export function removeOpen(store: SheetStore, removedAt: number): void {
  const { id, project, sheets } = store;
  if (sheets.has(id.value)) {
    store.keeper.want(id.value, { project: project.value, removedAt });
    toBin(store, id.value, project.value, removedAt);
  }
  const next = [...sheets.keys()][0];
  if (next === undefined) {
    newSheet(store);
    setOpen('');
  } else openSheet(store, next);
}

/** Takes a sheet out of the bin and opens it. */
export function putBack(store: SheetStore, id: string): void {
  const found = store.bin.value.find((each) => each.id === id);
  if (!found) return;
  store.bin.value = store.bin.value.filter((each) => each !== found);
  putSheet(store, id, found.project);
  openSheet(store, id);
}

/** Takes a sheet out of the bin for good. @throws where the browser does not let us */
export async function forget(store: SheetStore, id: string): Promise<void> {
  await store.shelf.forget(id);
  store.bin.value = store.bin.value.filter((each) => each.id !== id);
}

/**
 * Takes in what was done to a sheet elsewhere, from one state to another, box by box; what has been changed here
 * since stays. True where the open sheet is another now.
 */
export function absorb(store: SheetStore, id: string, from: Project, to: Project): boolean {
  const here = id === store.id.value ? store.project.value : store.sheets.get(id);
  if (!here) return false;
  const [was, is] = [from, to].map((project) => inSystem(project, here.system).typed);
  const changes = was && is && untouched(changesBetween(was, is), was, here.typed);
  if (!changes || changes.size === 0) return false;
  const history = everywhere(id === store.id.value ? store.history.value : begun(here), changes);
  store.sheets.set(id, history.present);
  if (id === store.id.value) store.history.value = history;
  list(store);
  return id === store.id.value;
}

/**
 * The worksheet page's one store: which sheet is open, and its history. The project changes by commands alone;
 * everything else is computed, and storage, tabs and results follow by themselves.
 */
import {
  batch,
  computed,
  effect,
  type ReadonlySignal,
  type Signal,
  signal,
} from '@preact/signals-core';
import { documentOf, type WorksheetDocument } from '../../form/document.ts';
import { isBlank } from '../../form/typed.ts';
import { bareUnits } from '../../form/units.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import type { Shelf } from '../io/shelf.ts';
import { begun, done, type History, redone, settled, undone } from './history.ts';
import { apply, type Command, emptyProject, type Project } from './project.ts';

/** A sheet on the shelf, as the list shows it. */
export interface ShelfItem {
  readonly id: string;
  readonly label: string;
}

/** What the page's parts share. */
export interface SheetStore {
  readonly id: Signal<string>;
  readonly history: Signal<History>;
  readonly project: ReadonlySignal<Project>;
  /** Sheets kept, by name; the one that is open is among them once something is typed. */
  readonly kept: Signal<readonly ShelfItem[]>;
  /** The browser would not keep the last change. */
  readonly notKept: Signal<boolean>;
  readonly shelf: Shelf;
  /** Documents of this visit by id: what cannot be kept by the browser is at least not lost on a change of sheet. */
  readonly documents: Map<string, WorksheetDocument>;
}

/** A store with an empty sheet. */
export function createSheetStore(shelf: Shelf, system: UnitSystem): SheetStore {
  const history = signal(begun(emptyProject(system)));
  const store = {
    id: signal(shelf.newId()),
    history,
    project: computed(() => history.value.present),
    kept: signal<readonly ShelfItem[]>([]),
    notKept: signal(false),
    shelf,
    documents: new Map(),
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

/** The document of a project as it stands. */
export const documentFrom = ({ typed, system, aside }: Project): WorksheetDocument =>
  documentOf(typed, bareUnits(system), aside);

const written = (document: WorksheetDocument) => JSON.stringify(document);

/** Whether anything has been done to the open sheet since it was opened. */
function isChanged({ history }: SheetStore): boolean {
  const { past, future } = history.peek();
  return past.length + future.length > 0;
}

/** Keeps the open sheet as it stands, once something has been done to it. */
function keep(store: SheetStore, project: Project): void {
  const { documents, shelf } = store;
  const id = store.id.peek();
  if (!isChanged(store) || (isBlank(project.typed) && !documents.has(id))) return;
  const document = documentFrom(project);
  documents.set(id, document);
  store.notKept.value = !shelf.keep(id, document);
  shelf.setOpen(id);
  list(store);
}

function list({ documents, kept }: SheetStore): void {
  const items = [...documents].map(([id, { typed }]) => ({ id, label: typed['label'] ?? '' }));
  kept.value = items.sort((a, b) => a.label.localeCompare(b.label));
}

/** Puts a sheet of this visit on the table. */
export function openSheet(store: SheetStore, id: string): void {
  const document = store.documents.get(id);
  if (!document) return;
  const { system } = store.project.value;
  batch(() => {
    store.id.value = id;
    store.history.value = begun(apply(emptyProject(system), { do: 'load', document }));
    store.shelf.setOpen(id);
    list(store);
  });
}

/** Adds a sheet and opens it; one that is there already, to the letter, is only opened. */
export function addSheet(store: SheetStore, document: WorksheetDocument): void {
  const twin = [...store.documents].find(([, known]) => written(known) === written(document));
  const id = twin?.[0] ?? store.shelf.newId();
  if (!twin) store.notKept.value = !store.shelf.keep(id, document);
  store.documents.set(id, document);
  openSheet(store, id);
}

/** An empty sheet; it is kept once something is typed. */
export function newSheet(store: SheetStore): void {
  batch(() => {
    store.id.value = store.shelf.newId();
    store.history.value = begun(emptyProject(store.project.value.system));
    list(store);
  });
}

/** Takes the open sheet away and gives its document back, so that it can be put back. */
export function removeOpen(store: SheetStore): WorksheetDocument {
  const document = documentFrom(store.project.value);
  store.documents.delete(store.id.value);
  store.shelf.remove(store.id.value);
  const next = [...store.documents.keys()][0];
  if (next === undefined) newSheet(store);
  else openSheet(store, next);
  return document;
}

/**
 * Takes in what another tab has kept. Where the open sheet is among it, it follows only if nothing was typed on it
 * here; otherwise what stands here stays, from now on as a sheet of its own, and the other tab's is kept beside it.
 */
export function takeIn(
  store: SheetStore,
  id: string,
  document: WorksheetDocument,
): 'followed' | 'bothKept' | undefined {
  const own = documentFrom(store.project.value);
  store.documents.set(id, document);
  list(store);
  if (id !== store.id.value || written(own) === written(document)) return undefined;
  if (!isChanged(store)) {
    openSheet(store, id);
    return 'followed';
  }
  store.id.value = store.shelf.newId();
  keep(store, store.project.value);
  return 'bothKept';
}

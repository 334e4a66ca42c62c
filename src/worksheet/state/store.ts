/**
 * The worksheet page's one store: which sheet is open and what is typed on it. Everything else is computed; nothing
 * that can be computed is kept.
 */
import { batch, computed, type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import type { Worksheet } from '../../core/worksheet.ts';
import { evaluateWorksheet, type WorksheetResults } from '../../core/worksheet.ts';
import type { WorksheetDocument } from '../../form/document.ts';
import { documentOf, textOf } from '../../form/document.ts';
import { readWorksheet, type WorksheetRead } from '../../form/reading.ts';
import { blankText, isBlankText, type WorksheetText } from '../../form/text.ts';
import { bareUnits, inUnits } from '../../form/units.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import type { Shelf } from '../io/shelf.ts';

/** A sheet on the shelf, as the list shows it. */
export interface ShelfItem {
  readonly id: string;
  readonly label: string;
}

/** What the page's parts share. */
export interface SheetStore {
  readonly id: Signal<string>;
  readonly text: Signal<WorksheetText>;
  readonly system: ReadonlySignal<UnitSystem>;
  readonly read: ReadonlySignal<WorksheetRead>;
  readonly results: ReadonlySignal<WorksheetResults>;
  /** Sheets kept, by name; the one that is open is among them once something is typed. */
  readonly kept: Signal<readonly ShelfItem[]>;
  /** The browser would not keep the last change. */
  readonly notKept: Signal<boolean>;
  readonly shelf: Shelf;
  /** Documents of this visit by id: what cannot be kept by the browser is at least not lost on a change of sheet. */
  readonly documents: Map<string, WorksheetDocument>;
}

/** The worksheet that is reckoned with: the same object as long as nothing in it has changed but its name. */
function lastingWorksheet(read: ReadonlySignal<WorksheetRead>): ReadonlySignal<Worksheet> {
  let last: { readonly key: string; readonly worksheet: Worksheet } | undefined;
  return computed(() => {
    const { worksheet } = read.value;
    const key = JSON.stringify({ ...worksheet, label: '' });
    if (last?.key !== key) last = { key, worksheet };
    return last.worksheet;
  });
}

/** A store with an empty sheet. */
export function createSheetStore(shelf: Shelf, system: ReadonlySignal<UnitSystem>): SheetStore {
  const text = signal(blankText);
  const read = computed(() => readWorksheet(text.value, system.value));
  const reckoned = lastingWorksheet(read);
  return {
    id: signal(shelf.newId()),
    text,
    system,
    read,
    results: computed(() => evaluateWorksheet(reckoned.value)),
    kept: signal<readonly ShelfItem[]>([]),
    notKept: signal(false),
    shelf,
    documents: new Map(),
  };
}

/** The document of the open sheet. */
export function openDocument({ text, system }: SheetStore): WorksheetDocument {
  return documentOf(text.value, bareUnits(system.value));
}

function list(store: SheetStore): void {
  const items = [...store.documents].map(([id, { label }]) => ({ id, label }));
  store.kept.value = items.sort((a, b) => a.label.localeCompare(b.label));
}

/** Changes what is typed, and keeps it. */
export function edit(store: SheetStore, change: (text: WorksheetText) => WorksheetText): void {
  const next = change(store.text.value);
  if (next === store.text.value) return;
  batch(() => {
    store.text.value = next;
    keepOpen(store);
  });
}

/** Keeps the open sheet as it stands. */
export function keepOpen(store: SheetStore): void {
  const { id, shelf, documents } = store;
  if (isBlankText(store.text.value) && !documents.has(id.value)) return;
  const document = openDocument(store);
  documents.set(id.value, document);
  store.notKept.value = !shelf.keep(id.value, document);
  shelf.setOpen(id.value);
  list(store);
}

/** Puts a sheet of this visit on the table. */
export function openSheet(store: SheetStore, id: string): void {
  const document = store.documents.get(id);
  if (!document) return;
  batch(() => {
    store.id.value = id;
    store.text.value = textOf(document, bareUnits(store.system.value));
    store.shelf.setOpen(id);
    list(store);
  });
}

/** Adds a sheet and opens it; one that is there already, to the letter, is only opened. */
export function addSheet(store: SheetStore, document: WorksheetDocument): void {
  const written = JSON.stringify(document);
  const twin = [...store.documents].find(([, known]) => JSON.stringify(known) === written);
  const id = twin?.[0] ?? store.shelf.newId();
  store.documents.set(id, document);
  openSheet(store, id);
  keepOpen(store);
}

/** An empty sheet; it is kept once something is typed. */
export function newSheet(store: SheetStore): void {
  batch(() => {
    store.id.value = store.shelf.newId();
    store.text.value = blankText;
    list(store);
  });
}

/** Takes the open sheet away and gives its document back, so that it can be put back. */
export function removeOpen(store: SheetStore): WorksheetDocument {
  const document = openDocument(store);
  store.documents.delete(store.id.value);
  store.shelf.remove(store.id.value);
  const next = [...store.documents.keys()][0];
  if (next === undefined) newSheet(store);
  else openSheet(store, next);
  return document;
}

/** Keeps the meaning of bare numbers when the site's unit system changes from `was`. */
export function changeUnits(store: SheetStore, was: UnitSystem): void {
  const now = store.system.value;
  if (was === now) return;
  edit(store, (text) => inUnits(text, bareUnits(was), bareUnits(now)));
}

/** Takes in what another tab has kept; the open sheet follows only where it is not being typed on. */
export function takeIn(store: SheetStore, id: string, document: WorksheetDocument): void {
  store.documents.set(id, document);
  list(store);
  if (id === store.id.value) openSheet(store, id);
}

/** Tabs of a browser with a fresh database: each with a store of its own on the one shelf. */
import 'fake-indexeddb/auto';
import { signal } from '@preact/signals-core';
import { IDBFactory } from 'fake-indexeddb';
import { vi } from 'vitest';
import { readDocument } from '../../../src/form/schema.ts';
import { typedAt } from '../../../src/form/typed.ts';
import { databaseOpener, type SheetRecord } from '../../../src/worksheet/io/database.ts';
import { lookAgain } from '../../../src/worksheet/io/other-tabs.ts';
import { Shelf } from '../../../src/worksheet/io/shelf.ts';
import { fill } from '../../../src/worksheet/keeping/filling.ts';
import { createSheetStore, projectFrom, run } from '../../../src/worksheet/state/store.ts';

/** A browser with nothing in its database and its local storage; gives the way to take it down again. */
export function freshBrowser(): () => void {
  vi.stubGlobal('indexedDB', new IDBFactory());
  const kept = new Map<string, string>();
  const storage = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => {
      kept.set(key, text);
      Object.assign(storage, { [key]: text });
    },
    removeItem: (key: string) => {
      kept.delete(key);
      Reflect.deleteProperty(storage, key);
    },
  };
  for (const name of Object.keys(storage))
    Object.defineProperty(storage, name, { enumerable: false });
  vi.stubGlobal('localStorage', storage);
  return () => vi.unstubAllGlobals();
}

/** A browser that refuses every write, or takes them again. */
export function refusing() {
  const open = databaseOpener();
  let isRefusing = true;
  const database = () =>
    isRefusing ? Promise.reject(new DOMException('full', 'QuotaExceededError')) : open();
  return {
    database,
    relent: () => {
      isRefusing = false;
    },
  };
}

type Path = 'label' | 'band.bodyWidth' | 'band.thickness' | 'rig.gaugeLength';

const read = ({ document }: SheetRecord) => {
  const found = readDocument(document);
  return typeof found === 'string' ? undefined : projectFrom(found.document, 'metric');
};

/** A tab that has taken in what is kept. */
export async function openTab(shelf = new Shelf()) {
  const told: string[] = [];
  const store = createSheetStore(shelf, 'metric', read, (id) => told.push(id));
  const said = signal('');
  await fill(store, said);
  return {
    store,
    said,
    told,
    type: (path: Path, text: string) => run(store, { do: 'type', path, text }),
    at: (path: Path) => typedAt(store.project.value.typed, path),
    written: () => store.keeper.flush(),
    hear: (id = store.id.value) => lookAgain(store, said, id),
  };
}

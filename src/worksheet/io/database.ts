/** The browser's database of sheets. Others can write it too: what lies in it is checked where it is read. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** A sheet as it lies there; one that was removed stays in the bin for a while. */
export interface SheetRecord {
  readonly id: string;
  readonly document: unknown;
  readonly savedAt: number; // ms since 1970
  /** Another with every change, so that a tab knows whether it has seen this one. */
  readonly stamp: string;
  readonly removedAt?: number | undefined; // ms since 1970
}

/** A sheet as it once was. */
export interface VersionRecord {
  readonly id: string;
  readonly savedAt: number; // ms since 1970
  readonly document: unknown;
}

/** What it holds: the sheets, and earlier versions of each. */
export interface Shelves extends DBSchema {
  sheets: { key: string; value: SheetRecord };
  versions: { key: [string, number]; value: VersionRecord };
}

/** The database, once it is open. */
export type Database = IDBPDatabase<Shelves>;

const NAME = 'tension-notebook';

/** Opens the database when it is first asked for, and again when the browser has closed it. */
export function databaseOpener(): () => Promise<Database> {
  let database: Promise<Database> | undefined;
  const forget = () => {
    database = undefined;
  };
  const open = () =>
    openDB<Shelves>(NAME, 1, {
      upgrade: (fresh) => {
        fresh.createObjectStore('sheets', { keyPath: 'id' });
        fresh.createObjectStore('versions', { keyPath: ['id', 'savedAt'] });
      },
      blocking: (_from, _to, { target }) => {
        (target as IDBDatabase).close(); // a newer site wants it
        forget();
      },
      terminated: forget,
    });
  return () => {
    database ??= open();
    database.catch(forget);
    return database;
  };
}

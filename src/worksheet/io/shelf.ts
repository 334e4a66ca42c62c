/**
 * The shelf on which this browser keeps the sheets: records of its database, with earlier versions of each. A change
 * is on the disk before it counts as kept. Where the browser will not, a call is rejected, and the caller says so.
 */
import type { IDBPObjectStore, StoreNames } from 'idb';
import {
  type Database,
  databaseOpener,
  type SheetRecord,
  type Shelves,
  type VersionRecord,
} from './database.ts';
import { KEPT } from './limits.ts';
import { hourOf, timesToKeep } from './version-times.ts';

const OPEN = 'worksheet-open';
const DAY = 86_400_000; // ms
const DURABLE = { durability: 'strict' } as const;

/** A change to keep: the sheet's new state, given the record that lies there. */
export interface Change {
  readonly id: string;
  readonly over: (stored: SheetRecord | undefined) => unknown;
  readonly removedAt?: number | undefined;
  /** The first change of a visit: what it replaces becomes an earlier version. */
  readonly isFirst: boolean;
}

/** A name for a sheet or a change that nothing else has. */
export function newId(): string {
  const [high = 0, low = 0] = crypto.getRandomValues(new Uint32Array(2));
  return high.toString(36) + low.toString(36);
}

const versionsOf = (id: string) => IDBKeyRange.bound([id], [id, Number.POSITIVE_INFINITY]);
const isSame = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);

type Versions = IDBPObjectStore<Shelves, StoreNames<Shelves>[], 'versions', 'readwrite'>;

async function putVersion(
  versions: Versions,
  { id, savedAt, document }: VersionRecord,
  now: number,
) {
  await versions.put({ id, savedAt, document });
  const times = (await versions.getAllKeys(versionsOf(id))).map(([, time]) => time);
  const kept = new Set(timesToKeep(times, now));
  for (const time of times) if (!kept.has(time)) await versions.delete([id, time]);
}

/** Where sheets are kept. */
export class Shelf {
  private readonly database: () => Promise<Database>;
  private readonly now: () => number;

  constructor(database = databaseOpener(), now: () => number = Date.now) {
    this.database = database;
    this.now = now;
  }

  /** Every sheet, those in the bin too; what has been there for too long is taken out. */
  async records(): Promise<readonly SheetRecord[]> {
    const records = await (await this.database()).getAll('sheets');
    const oldest = this.now() - KEPT.binDays * DAY;
    const isOld = ({ removedAt }: SheetRecord) => removedAt !== undefined && removedAt < oldest;
    for (const { id } of records.filter(isOld)) await this.forget(id);
    return records.filter((record) => !isOld(record));
  }

  /** One sheet. */
  async record(id: string): Promise<SheetRecord | undefined> {
    return (await this.database()).get('sheets', id);
  }

  /** Keeps a change, and what it replaces where that is worth it; gives the record that lies there now. */
  async keep({ id, over, removedAt, isFirst }: Change): Promise<SheetRecord> {
    const database = await this.database();
    const transaction = database.transaction(['sheets', 'versions'], 'readwrite', DURABLE);
    const sheets = transaction.objectStore('sheets');
    const stored = await sheets.get(id);
    const document = over(stored);
    if (stored && stored.removedAt === removedAt && isSame(stored.document, document))
      return stored;
    const savedAt = this.now();
    if (stored && (isFirst || hourOf(stored.savedAt) !== hourOf(savedAt)))
      await putVersion(transaction.objectStore('versions'), stored, savedAt);
    const record = { id, document, savedAt, stamp: newId(), removedAt };
    await sheets.put(record);
    await transaction.done;
    return record;
  }

  /** The earlier versions of a sheet, the newest first. */
  async versions(id: string): Promise<readonly VersionRecord[]> {
    const found = await (await this.database()).getAll('versions', versionsOf(id));
    return found.reverse();
  }

  /** Puts an earlier version beside a sheet. */
  async addVersion(version: VersionRecord): Promise<void> {
    const transaction = (await this.database()).transaction('versions', 'readwrite', DURABLE);
    await putVersion(transaction.store, version, this.now());
    await transaction.done;
  }

  /** Takes a sheet away for good, with its versions. */
  async forget(id: string): Promise<void> {
    const database = await this.database();
    const transaction = database.transaction(['sheets', 'versions'], 'readwrite', DURABLE);
    await transaction.objectStore('sheets').delete(id);
    await transaction.objectStore('versions').delete(versionsOf(id));
    await transaction.done;
  }
}

/** The sheet that was open last, where the browser remembers it. */
export function openId(): string | undefined {
  try {
    return localStorage.getItem(OPEN) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Remembers which sheet is open, where the browser does. */
export function setOpen(id: string): void {
  try {
    localStorage.setItem(OPEN, id);
  } catch {
    // It opens with another sheet then; nothing is lost.
  }
}

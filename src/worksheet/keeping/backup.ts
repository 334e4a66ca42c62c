/** Everything in one file, and the way back: opening it adds and never replaces. */

import { readDocument } from '../../form/schema.ts';
import { list, openSheet, projectFrom, type SheetStore, saidBy } from '../state/store.ts';
import type { BackupOutcome } from '../words/backup-words.ts';
import { documentFrom } from './keeper.ts';

/** One sheet of a backup. */
export interface BackedUp {
  readonly id: string;
  readonly savedAt: number; // ms since 1970
  readonly document: unknown;
}

/** All sheets as they stand. */
export function backupOf({ sheets, keeper }: SheetStore): readonly BackedUp[] {
  return [...sheets].map(([id, project]) => ({
    id,
    savedAt: keeper.savedAt.peek().get(id) ?? Date.now(),
    document: documentFrom(project),
  }));
}

type Fate = keyof BackupOutcome;

const isBackedUp = (entry: unknown): entry is BackedUp =>
  typeof entry === 'object' &&
  entry !== null &&
  'document' in entry &&
  'id' in entry &&
  typeof entry.id === 'string' &&
  'savedAt' in entry &&
  Number.isFinite(entry.savedAt);

async function take(store: SheetStore, entry: unknown): Promise<Fate> {
  if (!isBackedUp(entry)) return 'unread';
  const { id, savedAt, document } = entry;
  const read = readDocument(document);
  if (typeof read === 'string') return 'unread';
  const project = projectFrom(read.document, store.project.value.system);
  const here = store.sheets.get(id);
  if (here && saidBy(here) === saidBy(project)) return 'same';
  if (here && savedAt <= (store.keeper.savedAt.peek().get(id) ?? 0)) {
    await store.shelf.addVersion({ id, savedAt, document: read.document });
    return 'older';
  }
  if (here) await store.shelf.addVersion({ id, savedAt: Date.now(), document: documentFrom(here) });
  store.bin.value = store.bin.value.filter((each) => each.id !== id);
  store.sheets.set(id, project);
  store.keeper.want(id, { project });
  if (id === store.id.value) openSheet(store, id);
  return here ? 'newer' : 'added';
}

/** Takes a backup in, and says what became of its sheets. @throws where the browser does not let us keep a version */
export async function takeBackup(
  store: SheetStore,
  entries: readonly unknown[],
): Promise<BackupOutcome> {
  const outcome = { added: 0, newer: 0, older: 0, same: 0, unread: 0 };
  for (const entry of entries) outcome[await take(store, entry)] += 1;
  list(store);
  return outcome;
}

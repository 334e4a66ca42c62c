/** Takes in everything that this browser has kept: sheets, the bin, and what was put aside when a page went. */
import type { Signal } from '@preact/signals-core';
import type { SheetRecord } from '../io/database.ts';
import { putAsideBefore, type Rescued } from '../io/rescue.ts';
import { openId, type Shelf } from '../io/shelf.ts';
import type { Project } from '../state/project.ts';
import { isChanged, list, openSheet, type SheetStore, toBin } from '../state/store.ts';
import { mergedOver } from './merging.ts';

/** Whether sheets lie in local storage, where they were kept before there was a database. */
function hasFirstShelf(): boolean {
  try {
    return Object.keys(localStorage).some((key) => key.startsWith('worksheet.'));
  } catch {
    return false;
  }
}

function place(store: SheetStore, id: string, project: Project, removedAt?: number): void {
  if (removedAt === undefined) store.sheets.set(id, project);
  else toBin(store, id, project, removedAt);
}

/** Puts a record where it belongs; false where it cannot be read. */
function takeRecord(store: SheetStore, record: SheetRecord): boolean {
  const project = store.keeper.read(record);
  if (!project) return false;
  if (record.stamp !== '') store.keeper.knows(record, project);
  place(store, record.id, project, record.removedAt);
  return true;
}

/** What was put aside goes over what lies on the shelf, as far as it differs from what was known to lie there. */
function takeRescued(store: SheetStore, { id, removedAt, ...rescued }: Rescued): void {
  const read = (document: unknown) => store.keeper.read({ id, document, savedAt: 0, stamp: '' });
  const [ours, from, stored] = [read(rescued.document), read(rescued.from), store.sheets.get(id)];
  if (!ours) return;
  const project = stored && from ? mergedOver(stored, from, ours) : ours;
  place(store, id, project, removedAt);
  store.keeper.want(id, { project, removedAt });
}

/** Every record on the shelf; a browser in which sheets lie where they were kept before is brought here first. */
async function recordsOn(shelf: Shelf): Promise<readonly SheetRecord[]> {
  if (!hasFirstShelf()) return shelf.records().catch(() => []);
  const { recordsAtStart } = await import('../io/first-shelf.ts');
  return recordsAtStart(shelf);
}

/** Fills the store, and opens the sheet that was open last, unless something has been typed meanwhile. */
export async function fill(store: SheetStore, said: Signal<string>): Promise<void> {
  const records = await recordsOn(store.shelf);
  store.unread.value = records.filter((record) => !takeRecord(store, record));
  for (const rescued of putAsideBefore()) takeRescued(store, rescued);
  list(store);
  const open = openId() ?? '';
  const first = store.sheets.has(open) ? open : store.kept.value[0]?.id;
  if (first !== undefined && !isChanged(store)) openSheet(store, first);
  const unread = store.unread.value.length;
  if (unread === 0) return;
  const words = await import('../words/refusal-notices.ts').catch(() => undefined);
  if (words) said.value = words.unreadableNotice(unread);
}

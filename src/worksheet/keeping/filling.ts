/** Takes in everything that this browser has kept: sheets, the bin, and what was put aside when a page went. */
import type { Signal } from '@preact/signals-core';
import type { SheetRecord } from '../io/database.ts';
import { recordsAtStart } from '../io/first-shelf.ts';
import { putAsideBefore, type Rescued } from '../io/rescue.ts';
import { openId } from '../io/shelf.ts';
import type { Project } from '../state/project.ts';
import { isChanged, list, openSheet, type SheetStore, toBin } from '../state/store.ts';
import { unreadableNotice } from '../words/kept-words.ts';
import { mergedOver } from './merging.ts';

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

/** Fills the store, and opens the sheet that was open last, unless something has been typed meanwhile. */
export async function fill(store: SheetStore, said: Signal<string>): Promise<void> {
  const records = await recordsAtStart(store.shelf);
  store.unread.value = records.filter((record) => !takeRecord(store, record));
  for (const rescued of putAsideBefore()) takeRescued(store, rescued);
  list(store);
  const open = openId() ?? '';
  const first = store.sheets.has(open) ? open : store.kept.value[0]?.id;
  if (first !== undefined && !isChanged(store)) openSheet(store, first);
  const unread = store.unread.value.length;
  if (unread > 0) said.value = unreadableNotice(unread);
}

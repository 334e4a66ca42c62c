/** The same sheets in another tab: what is kept there is taken in here, box by box, and told. */
import type { Signal } from '@preact/signals-core';
import { absorb, list, type SheetStore, toBin } from '../state/store.ts';
import { NOTICES } from '../words/notices.ts';
import type { SheetRecord } from './database.ts';

const CHANNEL = 'tension-notebook sheets';

function takeRemoved(store: SheetStore, said: Signal<string>, id: string, removedAt: number): void {
  if (id === store.id.value) {
    said.value = NOTICES.removedElsewhere;
    return;
  }
  const project = store.sheets.get(id);
  if (!project) return;
  toBin(store, id, project, removedAt);
  list(store);
}

/** Takes in a record that another tab may have written. */
export function takeRecord(store: SheetStore, said: Signal<string>, record: SheetRecord): void {
  const { id, stamp, removedAt } = record;
  const known = store.keeper.knownAt(id);
  const project = store.keeper.read(record);
  if (known?.stamp === stamp || !project) return;
  store.keeper.knows(record, project);
  if (removedAt !== undefined) {
    takeRemoved(store, said, id, removedAt);
    return;
  }
  store.bin.value = store.bin.value.filter((each) => each.id !== id);
  if (!store.sheets.has(id)) store.sheets.set(id, project);
  else if (known && absorb(store, id, known.project, project)) said.value = NOTICES.followed;
  list(store);
}

/** Looks at a sheet on the shelf again; where that cannot be done, what stands here stays. */
export async function lookAgain(
  store: SheetStore,
  said: Signal<string>,
  id: string,
): Promise<void> {
  const record = await store.shelf.record(id).catch(() => undefined);
  if (record) takeRecord(store, said, record);
}

/** Follows the other tabs, and gives the way to tell them of a sheet. */
export function followOtherTabs(
  store: () => SheetStore,
  said: Signal<string>,
): (id: string) => void {
  const channel = new BroadcastChannel(CHANNEL);
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    if (typeof data === 'string') void lookAgain(store(), said, data);
  };
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void lookAgain(store(), said, store().id.value);
  });
  return (id) => channel.postMessage(id);
}

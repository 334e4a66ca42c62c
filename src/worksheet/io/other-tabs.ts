/** The same sheets in another tab: what is kept there is taken in here. */
import { type SheetStore, takeIn } from '../state/store.ts';

/** Follows the browser's store; a sheet removed elsewhere stays on this table until the page is left. */
export function followOtherTabs(store: SheetStore): void {
  addEventListener('storage', async ({ key, newValue }) => {
    const id = store.shelf.idOfKey(key);
    if (id === undefined || newValue === null) return;
    const entry = store.shelf.entries().find((each) => each.id === id);
    if (!entry) return;
    const { fromShelf } = await import('./outside.ts');
    const { sheets } = await fromShelf([entry]);
    const document = sheets.get(id);
    if (document) takeIn(store, id, document);
  });
}

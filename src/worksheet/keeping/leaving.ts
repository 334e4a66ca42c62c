/** When the page goes: what is not yet written is written, and put aside for the case that this does not end. */
import { putAside } from '../io/rescue.ts';
import { documentFrom, type Keeper } from './keeper.ts';

/** Puts aside what is not yet on the shelf. */
export function putUnwrittenAside(keeper: Keeper): void {
  for (const [id, { project, removedAt }] of keeper.unwritten()) {
    const known = keeper.knownAt(id)?.project;
    const from = known && documentFrom(known);
    putAside({ id, document: documentFrom(project), from, removedAt });
  }
}

/** Binds the page's going; one with work that the browser refuses to keep asks first. */
export function bindLeaving(keeper: Keeper, page: Document): void {
  const go = () => {
    putUnwrittenAside(keeper);
    void keeper.flush();
  };
  addEventListener('pagehide', go);
  page.addEventListener('visibilitychange', () => {
    if (page.visibilityState === 'hidden') go();
  });
  addEventListener('beforeunload', (event) => {
    if (keeper.refused.peek().size > 0) event.preventDefault();
  });
}

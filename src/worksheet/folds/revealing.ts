/** What one goes to is seen: the folds around it open, whether a link, a key or an undo leads there. */
import { LateRig } from '../insides/late.ts';
import type { SheetView } from '../state/view.ts';
import { setOpen } from './open-parts.ts';

/** Opens every fold around an element, and the one that a part of the sheet is. */
export function reveal(element: Element | null): void {
  const from = element?.querySelector(':scope.part > details') ?? element;
  for (let fold = from?.closest('details'); fold; fold = fold.parentElement?.closest('details'))
    fold.open = true;
}

/** The plan's fold, which is drawn only once its part is open. */
export const PLAN = '#plan';

/** Opens the part and, once it is drawn, the fold of the plan. */
async function revealPlan(page: Document, { openParts }: Pick<SheetView, 'openParts'>) {
  setOpen(openParts, 'rig', true);
  await LateRig.fetch();
  setTimeout(() => {
    const fold = page.querySelector(PLAN);
    reveal(fold);
    fold?.scrollIntoView();
  });
}

/** The place on the page that a fragment names; null where it names none. */
export function placeOf(page: Document, hash: string): Element | null {
  try {
    return page.getElementById(decodeURIComponent(hash.slice(1)));
  } catch {
    return null; // half a sign: no place has that name
  }
}

/** Opens what a link on the page or its address leads to. */
export function bindRevealing(page: Document, view: Pick<SheetView, 'openParts'>): void {
  const go = (hash: string) =>
    hash === PLAN ? void revealPlan(page, view) : reveal(placeOf(page, hash));
  const open = () => go(page.location.hash);
  page.addEventListener('click', ({ target }) => {
    const link = target instanceof Element && target.closest<HTMLAnchorElement>('a[href^="#"]');
    if (link) go(link.hash); // the address may be that already
  });
  addEventListener('hashchange', open);
  open();
}

/** What one goes to is seen: the folds around it open, whether a link, a key or an undo leads there. */

/** Opens every fold around an element, and the one that a part of the sheet is. */
export function reveal(element: Element | null): void {
  const from = element?.querySelector(':scope.part > details') ?? element;
  for (let fold = from?.closest('details'); fold; fold = fold.parentElement?.closest('details'))
    fold.open = true;
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
export function bindRevealing(page: Document): void {
  const open = () => reveal(placeOf(page, page.location.hash));
  page.addEventListener('click', ({ target }) => {
    const link = target instanceof Element && target.closest<HTMLAnchorElement>('a[href^="#"]');
    if (link) reveal(placeOf(page, link.hash)); // the address may be that already
  });
  addEventListener('hashchange', open);
  open();
}

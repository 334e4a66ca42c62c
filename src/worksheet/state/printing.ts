/** Prints the sheet or the card alone; the style sheet for paper does the choosing. */

/** Opens the browser's print dialogue for one of the two. */
export function printOnly(page: Document, what: 'sheet' | 'card'): void {
  const root = page.documentElement;
  root.dataset['print'] = what;
  addEventListener('afterprint', () => delete root.dataset['print'], { once: true });
  print();
}

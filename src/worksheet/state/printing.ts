/** Prints the sheet, the card or the plan alone; the style sheet for paper does the choosing. */

/** Opens the browser's print dialogue for one of the three. */
export function printOnly(page: Document, what: 'sheet' | 'card' | 'plan'): void {
  const root = page.documentElement;
  root.dataset['print'] = what;
  addEventListener('afterprint', () => delete root.dataset['print'], { once: true });
  print();
}

/** Prints the sheet or the card alone; the style sheet for paper does the choosing. On paper nothing that is filled in is folded. */
import { LISTS } from '../../form/fields.ts';
import { blockOf } from '../state/blocks.ts';
import type { SheetView } from '../state/view.ts';

/** Opens the browser's print dialogue for one of the two. */
export function printOnly(page: Document, what: 'sheet' | 'card'): void {
  const root = page.documentElement;
  root.dataset['print'] = what;
  addEventListener('afterprint', () => delete root.dataset['print'], { once: true });
  print();
}

const isFilled = (fold: Element) =>
  [...fold.querySelectorAll<HTMLInputElement>('input.box')].some(({ value }) => value !== '');

/** The folds that paper wants open and the reader has closed: parts, and seldom boxes with something in them. */
const closedOn = (form: HTMLElement): readonly HTMLDetailsElement[] =>
  [...form.querySelectorAll<HTMLDetailsElement>('details:not([open])')].filter(
    (fold) => fold.matches('.part > *') || (fold.matches('.seldom') && isFilled(fold)),
  );

/** Opens parts, filled folds and blocks of readings before printing, and leaves them afterwards as they were. */
export function bindUnfoldingForPrint(
  form: HTMLElement,
  { unfolded }: Pick<SheetView, 'unfolded'>,
): void {
  const all = new Set(Array.from({ length: blockOf(LISTS.readings.most) }, (_, block) => block));
  addEventListener('beforeprint', () => {
    const [before, closed] = [unfolded.peek(), closedOn(form)];
    unfolded.value = all;
    for (const fold of closed) fold.open = true;
    const restore = () => {
      unfolded.value = before;
      for (const fold of closed) fold.open = false;
    };
    addEventListener('afterprint', restore, { once: true });
  });
}

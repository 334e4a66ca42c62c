/** Prints the sheet, the card or the plan alone; the style sheet for paper does the choosing. On paper nothing that is filled in is folded. */
import { LISTS } from '../../form/lists.ts';
import type { SheetView } from '../state/view.ts';
import { blockOf } from './blocks.ts';
import { PART_IDS } from './sheet-parts.ts';

/** Opens the browser's print dialogue for one of the three. */
export function printOnly(page: Document, what: 'sheet' | 'card' | 'plan'): void {
  const root = page.documentElement;
  root.dataset['print'] = what;
  addEventListener('afterprint', () => delete root.dataset['print'], { once: true });
  print();
}

/** The folds that paper wants open and the reader has closed: seldom boxes with something in them. */
const closedOn = (form: HTMLElement): readonly HTMLDetailsElement[] => [
  ...form.querySelectorAll<HTMLDetailsElement>(
    '.seldom:not([open]):has(.box:not(:placeholder-shown))',
  ),
];

/** Opens parts, filled folds and blocks of readings before printing, and leaves them afterwards as they were. */
export function bindUnfoldingForPrint(
  form: HTMLElement,
  { unfolded, openParts }: Pick<SheetView, 'unfolded' | 'openParts'>,
): void {
  const all = new Set(Array.from({ length: blockOf(LISTS.readings.most) }, (_, block) => block));
  addEventListener('beforeprint', () => {
    const [before, parts, closed] = [unfolded.peek(), openParts.peek(), closedOn(form)];
    unfolded.value = all;
    openParts.value = new Set(PART_IDS); // not kept
    for (const fold of closed) fold.open = true;
    const restore = () => {
      unfolded.value = before;
      openParts.value = parts;
      for (const fold of closed) fold.open = false;
    };
    addEventListener('afterprint', restore, { once: true });
  });
}

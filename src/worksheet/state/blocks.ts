/** A long list of readings is drawn in blocks: the first and the last two, where one types; the others are unfolded. */
import { LISTS } from '../../form/fields.ts';
import type { SheetView } from './view.ts';

/** Rows in a block. */
export const BLOCK = 50;

/** The block that a row is in. */
export const blockOf = (row: number): number => Math.floor(row / BLOCK);

type Folds = Pick<SheetView, 'unfolded'>;

/** Unfolds one block. */
export function unfold({ unfolded }: Folds, block: number): void {
  unfolded.value = new Set([...unfolded.peek(), block]);
}

/** On paper no block is folded. */
export function bindUnfoldingForPrint({ unfolded }: Folds): void {
  const all = new Set(Array.from({ length: blockOf(LISTS.readings.most) }, (_, block) => block));
  addEventListener('beforeprint', () => {
    const before = unfolded.peek();
    unfolded.value = all;
    addEventListener(
      'afterprint',
      () => {
        unfolded.value = before;
      },
      { once: true },
    );
  });
}

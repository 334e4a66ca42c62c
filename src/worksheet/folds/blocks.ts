/** A long list of readings is drawn in blocks: the first and the last two, where one types; the others are unfolded. */
import type { SheetView } from '../state/view.ts';

/** Rows in a block. */
export const BLOCK = 50;

/** The block that a row is in. */
export const blockOf = (row: number): number => Math.floor(row / BLOCK);

type Folds = Pick<SheetView, 'unfolded'>;

/** Unfolds one block. */
export function unfold({ unfolded }: Folds, block: number): void {
  unfolded.value = new Set([...unfolded.peek(), block]);
}

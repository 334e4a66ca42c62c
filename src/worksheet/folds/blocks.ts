/** A long list of readings is drawn in blocks: the first and the last two, where one types; the others are unfolded. */
import type { SheetView } from '../state/view.ts';

/** Rows in a block. */
export const BLOCK = 25;

/** The block that a row is in. */
export const blockOf = (row: number): number => Math.floor(row / BLOCK);

/** A block that is drawn, or one line for all that are folded one after the other. */
export interface Stretch {
  readonly block: number;
  readonly last: number; // the last block of it
  readonly isFolded: boolean;
}

/** What is drawn of the blocks up to the last one. */
export function stretchesOf(last: number, unfolded: ReadonlySet<number>): readonly Stretch[] {
  const stretches: Stretch[] = [];
  for (let block = 0; block <= last; block += 1) {
    const isFolded = block > 0 && block < last - 1 && !unfolded.has(block);
    const before = stretches.at(-1);
    if (isFolded && before?.isFolded) stretches.splice(-1, 1, { ...before, last: block });
    else stretches.push({ block, last: block, isFolded });
  }
  return stretches;
}

type Folds = Pick<SheetView, 'unfolded'>;

/** Unfolds one block. */
export function unfold({ unfolded }: Folds, block: number): void {
  unfolded.value = new Set([...unfolded.peek(), block]);
}

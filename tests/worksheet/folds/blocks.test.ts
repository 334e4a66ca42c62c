/** Which blocks of a long list of readings are drawn, and which stand folded in one line. */
import { expect, it } from 'vitest';
import { stretchesOf } from '../../../src/worksheet/folds/blocks.ts';

const drawn = (block: number) => ({ block, last: block, isFolded: false });
const folded = (block: number, last: number) => ({ block, last, isFolded: true });

it('draws all of a list of three blocks', () => {
  expect(stretchesOf(2, new Set())).toEqual([drawn(0), drawn(1), drawn(2)]);
});

it('folds what is between the first and the last two into one line', () => {
  expect(stretchesOf(9, new Set())).toEqual([drawn(0), folded(1, 7), drawn(8), drawn(9)]);
});

it('draws an unfolded block, and one line before and after it', () => {
  expect(stretchesOf(7, new Set([3]))).toEqual([
    drawn(0),
    folded(1, 2),
    drawn(3),
    folded(4, 5),
    drawn(6),
    drawn(7),
  ]);
});

it('draws one block of a short list', () => {
  expect(stretchesOf(0, new Set())).toEqual([drawn(0)]);
});

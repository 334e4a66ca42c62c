import { describe, expect, it } from 'vitest';
import { lines } from '../../../src/live/sharing/lines.ts';

const LETTERS = { size: 10, family: 'any' };
/** Every letter is one unit wide. */
const broken = (text: string, width: number) => lines(text, width, LETTERS, ({ length }) => length);

describe('lines', () => {
  it('break between words, where the next would not fit', () =>
    expect(broken('twice the tension takes', 10)).toEqual(['twice the', 'tension', 'takes']));
  it('are one where all fits, and none where nothing is said', () => {
    expect(broken('half the bow', 12)).toEqual(['half the bow']);
    expect(broken('', 12)).toEqual([]);
  });
  it('break a word that is longer than a line, such as an address', () =>
    expect(broken('see abcdefghijkl', 5)).toEqual(['see', 'abcde', 'fghij', 'kl']));
  it('keep a number with its unit', () =>
    expect(broken('pulls 3190\u00a0N.', 10)).toEqual(['pulls', '3190\u00a0N.']));
  it('lose nothing but spaces', () => {
    const text = 'end-on to scale; movement × 13 beside the span';
    for (const width of [3, 8, 20])
      expect(broken(text, width).join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
  });
});

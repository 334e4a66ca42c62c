/** Whole numbers as they are typed: what is taken, and what a refusal says. */
import { describe, expect, it } from 'vitest';
import { wholeIn } from '../../../src/teaching/kit/whole.ts';

const limits = { least: 1, most: 40 };

describe('a whole number', () => {
  it.each([
    ['1', 1],
    [' 40 ', 40],
    ['07', 7],
    ['12.0', 12],
  ])('is read from “%s”', (text, value) =>
    expect(wholeIn(text, limits)).toEqual({ ok: true, value }),
  );

  it.each(['0', '41', '2.5', '-3', 'many', '1e9', '3/8', '1,200', '<b>', '∞'])(
    'is not read from “%s”: the refusal repeats it and says what would be right',
    (text) => {
      const read = wholeIn(text, limits);
      expect(read.ok).toBe(false);
      expect(!read.ok && read.reason).toBe(
        `“${text}” does not fit. Type a whole number from 1 to 40.`,
      );
    },
  );

  it('is missed where nothing is typed', () =>
    expect(wholeIn('  ', limits)).toEqual({
      ok: false,
      reason: 'Nothing is typed. Type a whole number from 1 to 40.',
    }));
});

/** What fits on a card: a fair part of each list, and never more than there is room for. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitting, linesOf } from '../../../src/worksheet/card/room.ts';

describe('what fits on the card', () => {
  it('is all of it where there is room', () =>
    expect(fitting([[1, 1], [2], []], 20)).toEqual([2, 1, 0]));

  it('is one of each in turn, so that no list takes all', () =>
    expect(fitting([Array(12).fill(1), Array(12).fill(2), Array(12).fill(1)], 13)).toEqual([
      3, 2, 3,
    ]));

  it('leaves a line for each list that is cut', () => {
    expect(fitting([[1, 1, 1]], 3)).toEqual([2]);
    expect(
      fitting(
        [
          [1, 1],
          [1, 1],
        ],
        4,
      ),
    ).toEqual([1, 1]);
  });

  it('passes over a list whose next does not fit, for one whose next does', () =>
    expect(fitting([[5], [1, 1]], 5)).toEqual([0, 2]));

  it('never takes more room than there is, nor more than there are', () => {
    const costs = fc.array(fc.array(fc.nat(4), { maxLength: 12 }), { maxLength: 4 });
    fc.assert(
      fc.property(costs, fc.nat(30), (lists, lines) => {
        const taken = fitting(lists, lines);
        const used = lists.flatMap((list, at) => list.slice(0, taken[at]));
        const sum = used.reduce((whole, cost) => whole + cost, 0);
        const cut = lists.filter((list, at) => (taken[at] ?? 0) < list.length).length;
        expect(taken.every((count, at) => count <= (lists[at]?.length ?? 0))).toBe(true);
        if (sum > 0) expect(sum + cut).toBeLessThanOrEqual(lines);
      }),
    );
  });
});

describe('the lines of a sentence', () => {
  it('are at least one, and one more for each that is begun', () => {
    expect(linesOf('', 10)).toBe(1);
    expect(linesOf('ten letters'.slice(0, 10), 10)).toBe(1);
    expect(linesOf('ten letters', 10)).toBe(2);
  });
});

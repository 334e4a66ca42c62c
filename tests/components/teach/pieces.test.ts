/** The small parts of the teaching pack: blanks of a hand-out, minutes of a plan, drawings that stand still. */
import { describe, expect, it } from 'vitest';
import { blankPieces, blanksOf } from '../../../src/components/teach/blanks.ts';
import { timedParts, totalMinutes } from '../../../src/components/teach/clock.ts';
import { hasSetOfHandOuts } from '../../../src/components/teach/sets.ts';
import { still } from '../../../src/components/teach/still.ts';

describe('a line with blanks', () => {
  it('is words, numbers, blanks for numbers, blanks for words', () =>
    expect(blankPieces('At {torque:3} it pulls [force:2], [=no] more.')).toEqual([
      { text: 'At ' },
      { name: 'torque', isBlank: false, digits: 3 },
      { text: ' it pulls ' },
      { name: 'force', isBlank: true, digits: 2, mark: ',' },
      { text: ' ' },
      { word: 'no' },
      { text: ' more.' },
    ]));

  it('keeps a mark with the blank that it follows, and nothing else of the text', () => {
    expect(blankPieces('[=no].')).toEqual([{ word: 'no', mark: '.' }]);
    expect(blankPieces('{a}. [=b] c.').slice(1)).toEqual([
      { text: '. ' },
      { word: 'b' },
      { text: ' c.' },
    ]);
  });

  it('names its blanks in their order', () =>
    expect(blanksOf('{a} [=b c] and [d]')).toEqual([
      { word: 'b c' },
      { name: 'd', isBlank: true },
    ]));

  it.each(['a {b', 'a [', 'a [b c]', '{b c}'])('is refused with a bracket left over: %s', (text) =>
    expect(() => blankPieces(text)).toThrow(RangeError),
  );
});

describe('the minutes of a plan', () => {
  const parts = [5, 10, 15].map((minutes) => ({ minutes, what: '', how: '' }));
  it('add up, and each part begins where the one before ends', () => {
    expect(totalMinutes(parts)).toBe(30);
    expect(timedParts(parts).map(({ from }) => from)).toEqual([0, 5, 15]);
  });
});

describe('the hand-outs of a plan', () => {
  it('are a set where there are many to print', () => {
    expect(hasSetOfHandOuts({ handouts: ['a', 'b', 'c', 'd'] })).toBe(true);
    expect(hasSetOfHandOuts({ handouts: ['a', 'b', 'c'] })).toBe(false);
  });
});

describe('a drawing that stands still', () => {
  it('keeps its grips as drawings, no longer as controls', () => {
    const drawn =
      '<svg role="img"><g class="handle" transform="translate(1 2)" role="slider" tabindex="0" aria-label="pull" aria-valuenow="3" data-input="x"><path d="M0 0"/></g></svg>';
    expect(still(drawn)).toBe(
      '<svg role="img"><g class="handle" transform="translate(1 2)" aria-hidden="true"><path d="M0 0"/></g></svg>',
    );
  });
});

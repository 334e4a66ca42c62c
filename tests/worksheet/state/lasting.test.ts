/** Values keep their identity while they say the same, part by part: so parts of the page are not drawn again. */
import { effect, signal } from '@preact/signals-core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lasting, selector } from '../../../src/worksheet/state/lasting.ts';
import { sharing } from '../../../src/worksheet/state/sharing.ts';

describe('sharing', () => {
  it('says what the new value says, and is the old one where they are alike', () =>
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (last, next) => {
        expect(sharing(last, next)).toEqual(next);
        const copy = JSON.parse(JSON.stringify(last));
        expect(sharing(last, copy)).toBe(last);
      }),
    ));

  it('keeps the parts that have not changed', () => {
    const last = { a: { b: [1, { c: 2 }] }, d: 3 };
    const next = sharing(last, { a: { b: [1, { c: 2 }] }, d: 4 });
    expect(next.a).toBe(last.a);
    expect(sharing([1], { 0: 1 })).toEqual({ 0: 1 });
    expect(sharing({ a: 1, b: undefined }, { a: 1 })).not.toHaveProperty('b');
  });
});

describe('a lasting value', () => {
  it('tells no one when it is worked out anew and is the same', () => {
    const [source, told] = [signal(1), [] as unknown[]];
    const sign = lasting(() => ({ isPositive: source.value > 0 }));
    effect(() => void told.push(sign.value));
    source.value = 2;
    source.value = -1;
    expect(told).toEqual([{ isPositive: true }, { isPositive: false }]);
  });

  it('by name is worked out once', () => {
    const select = selector();
    let times = 0;
    const ask = () => select('a', () => (times += 1));
    expect([ask(), ask(), times]).toEqual([1, 1, 1]);
  });
});

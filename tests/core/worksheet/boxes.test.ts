import { describe, expect, it } from 'vitest';
import { boxes, isUsable } from '../../../src/core/worksheet/boxes.ts';

describe('isUsable', () => {
  it.each([
    [1, 'positive', true],
    [0, 'positive', false],
    [0, 'notNegative', true],
    [-1, 'notNegative', false],
    [-1, 'finite', true],
    [Number.NaN, 'finite', false],
    [Number.POSITIVE_INFINITY, 'positive', false],
    [Number.POSITIVE_INFINITY, 'notNegative', false],
    [undefined, 'finite', false],
  ] as const)('%s as %s: %s', (value, limit, expected) =>
    expect(isUsable(value, limit)).toBe(expected),
  );

  it('asks for more than 0 unless told otherwise', () => {
    expect(isUsable(2)).toBe(true);
    expect(isUsable(0)).toBe(false);
  });
});

describe('boxes', () => {
  it('gives the values by name', () =>
    expect(boxes({ a: ['x.a', 1], b: ['x.b', 0, 'notNegative'] })).toEqual({
      ready: true,
      a: 1,
      b: 0,
    }));

  it('waits for empty boxes without refusing anything', () =>
    expect(boxes({ a: ['x.a', undefined], b: ['x.b', 2] })).toEqual({
      ready: false,
      waitsFor: ['x.a'],
    }));

  it('refuses what a box may not hold, with what it was', () =>
    expect(boxes({ a: ['x.a', undefined], b: ['x.b', -2] })).toEqual({
      ready: false,
      waitsFor: ['x.a', 'x.b'],
      refusal: { code: 'outOfRange', values: { was: -2 } },
    }));

  it('does not repeat what is no number', () =>
    expect(boxes({ a: ['x.a', Number.NaN] })).toMatchObject({
      refusal: { code: 'outOfRange', values: {} },
    }));
});

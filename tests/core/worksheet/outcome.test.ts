import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../../src/core/worksheet/outcome.ts';
import { ready, refused, whenReady } from '../../../src/core/worksheet/outcome.ts';
import type { WorksheetPath } from '../../../src/core/worksheet/path.ts';

const waiting = (...waitsFor: WorksheetPath[]): Outcome<{ value: number }> => ({
  ready: false,
  waitsFor,
});
const one = (value: number): Outcome<{ value: number }> => ready({ value });
const sum = (a: Outcome<{ value: number }>, b: Outcome<{ value: number }>) =>
  whenReady({ a, b }, (known) => ready({ value: known.a.value + known.b.value }));

describe('whenReady', () => {
  it('derives once everything is there', () =>
    expect(sum(one(2), one(3))).toEqual({ ready: true, value: 5 }));

  it('waits for all that is missing, each input once', () =>
    expect(sum(waiting('band', 'mill'), waiting('mill', 'rig'))).toEqual({
      ready: false,
      waitsFor: ['band', 'mill', 'rig'],
    }));

  it('carries on the first refusal', () => {
    const [first, second] = [
      refused('outOfRange', { was: 1 }, ['band']),
      refused('readingFalls', {}, ['mill']),
    ];
    expect(sum(first, second)).toEqual({
      ready: false,
      waitsFor: ['band', 'mill'],
      refusal: { code: 'outOfRange', values: { was: 1 } },
    });
    expect(sum(waiting('rig'), second)).toMatchObject({ refusal: { code: 'readingFalls' } });
  });

  it('hands the values over without their flags', () =>
    whenReady({ a: one(2) }, ({ a }) => {
      expect(a).toEqual({ value: 2 });
      return ready({});
    }));

  it.each([
    ['a refusal of the core', new RangeError('number of readings must be 12 (was 11)')],
    ['an argument that is none', new TypeError('not a number at all')],
  ])('hides no fault of ours: %s', (_, fault) =>
    expect(() =>
      whenReady({}, () => {
        throw fault;
      }),
    ).toThrow(fault),
  );

  it('is ready exactly where all it needs is', () =>
    fc.assert(
      fc.property(fc.array(fc.boolean()), (flags) => {
        const needs = Object.fromEntries(
          flags.map((there, i) => [i, there ? one(i) : waiting('readings')]),
        );
        expect(whenReady(needs, () => ready({})).ready).toBe(flags.every(Boolean));
      }),
    ));
});

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

  it('tells numbers that are out of reach, wherever they stand, and what the core refuses', () => {
    const tooFar = { ready: false, waitsFor: [], refusal: { code: 'beyondNumbers', values: {} } };
    expect(sum(one(1e308), one(1e308))).toEqual(tooFar);
    expect(whenReady({}, () => ready({ deep: [{ value: Number.NaN }] }))).toEqual(tooFar);
    const refuse = () => {
      throw new RangeError('gaugeLength must be above 0 m (was 0)');
    };
    expect(whenReady({}, refuse)).toEqual(tooFar);
  });

  it('does not hide a fault that is not about numbers', () => {
    const fail = () => {
      throw new TypeError('not a number at all');
    };
    expect(() => whenReady({}, fail)).toThrow(TypeError);
  });

  it('leaves text, empty and missing values alone', () => {
    const value = { text: 'mark', missing: undefined, empty: null };
    expect(whenReady({}, () => ready(value))).toEqual({ ready: true, ...value });
  });

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

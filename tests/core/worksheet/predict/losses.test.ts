import { describe, expect, it } from 'vitest';
import type { WorksheetFriction } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetLossRange } from '../../../../src/core/worksheet/predict/losses.ts';
import { refusalOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

const range = (friction: WorksheetFriction) => worksheetLossRange({ ...millA.tensioner, friction });
describe('worksheetLossRange', () => {
  it('takes a range, of no width at least', () => {
    expect(range({ kind: 'friction', low: 0.1, high: 0.18 })).toMatchObject({
      low: 0.1,
      high: 0.18,
    });
    expect(range({ kind: 'friction', low: 0.1, high: 0.1 }).ready).toBe(true);
  });

  it('refuses one the wrong way round, and more efficiency than there is, with their boxes', () => {
    expect(range({ kind: 'friction', low: 0.2, high: 0.1 })).toEqual({
      ready: false,
      waitsFor: ['tensioner.friction.low', 'tensioner.friction.high'],
      refusal: { code: 'rangeBackwards', values: { low: 0.2, high: 0.1 } },
    });
    expect(range({ kind: 'efficiency', low: 0.2, high: 1.1 })).toEqual({
      ready: false,
      waitsFor: ['tensioner.friction.high'],
      refusal: { code: 'efficiencyAboveOne', values: { high: 1.1 } },
    });
  });

  it('lets an efficiency of one pass, and a friction above it', () => {
    expect(refusalOf(range({ kind: 'efficiency', low: 0.2, high: 1 }))).toBeUndefined();
    expect(refusalOf(range({ kind: 'friction', low: 0.2, high: 1.1 }))).toBeUndefined();
  });

  const ends = { low: undefined, high: undefined };

  it('takes what a handbook has for a greased one, 0.10 to 0.20', () =>
    expect(range({ kind: 'greased', ...ends })).toMatchObject({ low: 0.1, high: 0.2 }));

  it.each(['unknown', 'friction', 'efficiency'] as const)(
    'takes a thread of which nothing but “%s” is said for any, greased or dry: 0.10 to 0.30',
    (kind) =>
      expect(range({ kind, ...ends })).toEqual({
        ready: true,
        of: 'friction',
        low: 0.1,
        high: 0.3,
        isAssumed: true,
      }),
  );

  it('takes more for a dry one, 0.15 to 0.30', () =>
    expect(range({ kind: 'dry', ...ends })).toMatchObject({ low: 0.15, high: 0.3 }));

  it('waits for the other end where one is typed', () =>
    expect(range({ kind: 'friction', low: 0.1, high: undefined })).toEqual({
      ready: false,
      waitsFor: ['tensioner.friction.high'],
    }));
});

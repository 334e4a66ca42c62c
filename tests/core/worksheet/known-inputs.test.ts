import { describe, expect, it } from 'vitest';
import { isUsable, knownInputs } from '../../../src/core/worksheet/known-inputs.ts';

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
    [1e-9, 'positive', true],
    [0.99e-9, 'positive', false],
    [-0.99e-9, 'finite', false],
    [1e13, 'positive', true],
    [-1e13, 'finite', true],
    [1.01e13, 'positive', false],
    [-1.01e13, 'finite', false],
    [0, 'finite', true],
  ] as const)('%s as %s: %s', (value, limit, expected) =>
    expect(isUsable(value, limit)).toBe(expected),
  );

  it('asks for more than 0 unless told otherwise', () => {
    expect(isUsable(2)).toBe(true);
    expect(isUsable(0)).toBe(false);
  });
});

describe('knownInputs', () => {
  it('gives the values by name', () =>
    expect(knownInputs({ a: ['band.thickness', 1], b: ['rig.readTo', 0, 'notNegative'] })).toEqual({
      ready: true,
      a: 1,
      b: 0,
    }));

  it('waits for unknown inputs without refusing anything', () =>
    expect(knownInputs({ a: ['band.thickness', undefined], b: ['rig.readTo', 2] })).toEqual({
      ready: false,
      waitsFor: ['band.thickness'],
    }));

  it('refuses what an input may not be, with what it was', () =>
    expect(knownInputs({ a: ['band.thickness', undefined], b: ['rig.readTo', -2] })).toEqual({
      ready: false,
      waitsFor: ['band.thickness', 'rig.readTo'],
      refusal: { code: 'outOfRange', values: { was: -2 } },
    }));

  it.each([1e14, 1e-12, Number.POSITIVE_INFINITY])(
    'names the input that is too far out: %s',
    (was) =>
      expect(
        knownInputs({
          a: ['band.thickness', undefined],
          b: ['band.bodyWidth', was],
          c: ['rig.readTo', -2],
        }),
      ).toEqual({
        ready: false,
        waitsFor: ['band.thickness', 'band.bodyWidth', 'rig.readTo'],
        refusal: { code: 'beyondNumbers', values: {} },
      }),
  );

  it('does not repeat what is no number', () =>
    expect(knownInputs({ a: ['band.thickness', Number.NaN] })).toMatchObject({
      refusal: { code: 'outOfRange', values: {} },
    }));
});

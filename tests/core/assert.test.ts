import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  assertAtLeast,
  assertAtMost,
  assertBelow,
  assertBetween,
  assertFinite,
  assertList,
  assertPositive,
  assertWhole,
  refuse,
} from '../../src/core/assert.ts';

const noNumber = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
const anyFinite = fc.double({ noNaN: true, noDefaultInfinity: true });

describe('refuse', () => {
  it('reads NAME must be CONDITION UNIT (was VALUE): definition', () =>
    expect(() => refuse('width', 'above 0', 'm', -1)).toThrow(
      new RangeError('width must be above 0 m (was -1)'),
    ));
  it('leaves out a unit that there is not', () =>
    expect(() => refuse('designation', 'a listed thread', '', 'handle')).toThrow(
      new RangeError('designation must be a listed thread (was handle)'),
    ));
});

describe('assertFinite', () => {
  it('passes any finite number', () =>
    fc.assert(
      fc.property(anyFinite, (value) => {
        expect(() => assertFinite('x', value)).not.toThrow();
      }),
    ));
  it.each(noNumber)('refuses %s, with and without a unit', (value) => {
    expect(() => assertFinite('x', value)).toThrow(`x must be a finite number (was ${value})`);
    expect(() => assertFinite('x', value, 'm')).toThrow(
      `x must be a finite number of m (was ${value})`,
    );
  });
});

describe('assertPositive', () => {
  it('passes the smallest number above zero', () =>
    expect(() => assertPositive('x', Number.MIN_VALUE)).not.toThrow());
  it.each([0, -0, -1, ...noNumber])('refuses %s', (value) =>
    expect(() => assertPositive('x', value, 'Pa')).toThrow(/^x must be above 0 Pa \(was /),
  );
});

describe('assertAtLeast', () => {
  it('passes the limit itself', () => expect(() => assertAtLeast('x', 2, 2)).not.toThrow());
  it.each([1.999, ...noNumber])('refuses %s', (value) =>
    expect(() => assertAtLeast('x', value, 2, 'm')).toThrow(/^x must be at least 2 m \(was /),
  );
});

describe('assertBetween', () => {
  it.each([1, 1.5, 2])('passes %s', (value) =>
    expect(() => assertBetween('x', value, 1, 2)).not.toThrow(),
  );
  it.each([0.999, 2.001, ...noNumber])('refuses %s', (value) =>
    expect(() => assertBetween('x', value, 1, 2, 'K')).toThrow(
      /^x must be between 1 and 2 K \(was /,
    ),
  );
});

describe('assertBelow and assertAtMost', () => {
  it('part only at the limit', () => {
    expect(() => assertAtMost('x', 3, 3)).not.toThrow();
    expect(() => assertBelow('x', 3, 3, 'm')).toThrow('x must be below 3 m (was 3)');
    expect(() => assertAtMost('x', 3.001, 3, 'm')).toThrow('x must be at most 3 m (was 3.001)');
  });
  it('agree away from it', () =>
    fc.assert(
      fc.property(anyFinite, anyFinite, (value, limit) => {
        fc.pre(value !== limit);
        const passes = (check: typeof assertBelow) => {
          try {
            check('x', value, limit);
            return true;
          } catch {
            return false;
          }
        };
        expect(passes(assertBelow)).toBe(value < limit);
        expect(passes(assertAtMost)).toBe(value < limit);
      }),
    ));
  it('refuse what is no number', () => {
    expect(() => assertBelow('x', Number.NaN, 3)).toThrow('x must be below 3 (was NaN)');
    expect(() => assertAtMost('x', Number.NaN, 3)).toThrow('x must be at most 3 (was NaN)');
  });
});

describe('assertWhole', () => {
  it.each([1, 4, 8])('passes %s', (value) =>
    expect(() => assertWhole('starts', value, 1, 8)).not.toThrow(),
  );
  it.each([0, 1.5, 9, ...noNumber])('refuses %s', (value) =>
    expect(() => assertWhole('starts', value, 1, 8)).toThrow(
      /^starts must be a whole number between 1 and 8 \(was /,
    ),
  );
});

describe('assertList', () => {
  it('passes a list of the right length, an array or a typed one', () => {
    expect(() => assertList('x', [1, 2], 2)).not.toThrow();
    expect(() => assertList('x', new Float64Array(3), 3)).not.toThrow();
  });
  it('refuses another length', () =>
    expect(() => assertList('x', [1], 2)).toThrow('number of x must be 2 (was 1)'));
  it('names the place of what is no number', () =>
    expect(() => assertList('x', [1, Number.NaN], 2, 'm')).toThrow(
      'x[1] must be a finite number of m (was NaN)',
    ));
  it('leaves out a unit that there is not', () =>
    expect(() => assertList('x', [Number.NaN], 1)).toThrow(
      new RangeError('x[0] must be a finite number (was NaN)'),
    ));
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  decimalsFor,
  formatFixed,
  formatNumber,
  plainFixed,
  roundingDecimals,
} from '../../src/units/format-number.ts';

describe('decimalsFor', () => {
  it.each([
    [134, 3, 0],
    [12.6, 3, 1],
    [9.996, 3, 1],
    [0.0427, 3, 4],
    [15373, 3, -2],
    [-5, 2, 1],
    [0, 3, 0],
  ])('of %f to %i digits is %i', (value, digits, decimals) =>
    expect(decimalsFor(value, digits)).toBe(decimals),
  );
});

describe('plainFixed', () => {
  it.each([
    [134.27, 0, '134'],
    [-0.001, 2, '0.00'],
    [-0.06, 1, '-0.1'],
    [15373, -2, '15400'],
    [2.5, 0, '3'],
    [0, 1, '0.0'],
    [-15350, -2, '-15400'],
    [0.1, 30, '0.10000000000000000555'],
  ])('writes %f to %i decimals as %s', (value, decimals, text) =>
    expect(plainFixed(value, decimals)).toBe(text),
  );

  it.each([
    ['1.100', 1.1],
    ['20.000', 20],
    ['0.000', 0],
  ])('trims %s', (_untrimmed, value) => expect(plainFixed(value, 3, true)).toBe(String(value)));

  it('leaves the zeros of a whole number alone', () =>
    expect(plainFixed(1200, 0, true)).toBe('1200'));
});

describe('formatFixed', () => {
  it.each([
    [15373, 0, '15\u202f373'],
    [1537, 0, '1537'],
    [-1234567.8912, 4, '−1\u202f234\u202f567.8912'],
    [1e15, 0, '1.00 × 10¹⁵'],
    [Number.NaN, 0, '–'],
    [Number.POSITIVE_INFINITY, 0, '∞'],
    [Number.NEGATIVE_INFINITY, 0, '−∞'],
  ])('shows %f to %i decimals as %s', (value, decimals, text) =>
    expect(formatFixed(value, decimals)).toBe(text),
  );
});

describe('formatNumber', () => {
  it.each([
    [134.27, { significant: 3 }, '134'],
    [4.716, { significant: 3 }, '4.72'],
    [9.996, { significant: 3 }, '10.0'],
    [0.00000942, { significant: 3 }, '9.42 × 10⁻⁶'],
    [-0.000000942, { significant: 2 }, '−9.4 × 10⁻⁷'],
    [4e-11, { significant: 3 }, '0'],
    [1e-9, { significant: 3 }, '1.00 × 10⁻⁹'],
    [0.0000123, { significant: 3 }, '0.0000123'],
    [0, { significant: 3 }, '0'],
    [0, { decimals: 3 }, '0.000'],
    [0.0115, { decimals: 4 }, '0.0115'],
    [0.00024, { decimals: 3 }, '0.0002'],
    [0.00000002, { decimals: 3 }, '2 × 10⁻⁸'],
    [35, { significant: 4, trim: true }, '35'],
    [20.75, { significant: 4, trim: true }, '20.75'],
    [Number.NaN, { decimals: 1 }, '–'],
    [Number.POSITIVE_INFINITY, { significant: 3 }, '∞'],
  ] as const)('shows %f after %j as %s', (value, rounding, text) =>
    expect(formatNumber(value, rounding)).toBe(text),
  );

  it('keeps the order of numbers: what is larger never looks smaller', () => {
    const amounts = fc.double({ min: -1e9, max: 1e9, noNaN: true });
    const read = (value: number) =>
      Number(plainFixed(value, roundingDecimals(value, { significant: 3 })));
    fc.assert(
      fc.property(amounts, amounts, (one, other) => {
        expect(read(Math.min(one, other))).toBeLessThanOrEqual(read(Math.max(one, other)));
      }),
    );
  });
});

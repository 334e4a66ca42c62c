import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatInput,
  formatParts,
  formatQuantity,
  formatRange,
} from '../../src/units/format-quantity.ts';
import { displayOf, QUANTITY_KINDS } from '../../src/units/kinds.ts';
import { parseQuantity } from '../../src/units/reading/parse-quantity.ts';
import { fromSi, toSi } from '../../src/units/si-value.ts';

const kinds = fc.constantFrom(...QUANTITY_KINDS);
const systems = fc.constantFrom('metric' as const, 'us' as const);
const spaced = (text: string) => text.replaceAll('\u202f', '_').replaceAll('\u00a0', '~');

describe('formatQuantity', () => {
  it.each([
    [134.27e6, 'stress', 'metric', '134_MPa'],
    [134.27e6, 'stress', 'us', '19_500_psi'],
    [4.7e6, 'stress', 'metric', '4.70_MPa'],
    [205e9, 'modulus', 'us', '29.73_Mpsi'],
    [0.035, 'length', 'metric', '35_mm'],
    [0.52705, 'length', 'us', '20.75_in'],
    [0.0010668, 'thickness', 'us', '0.042_in'],
    [293e-6, 'stretch', 'metric', '0.293_mm'],
    [293e-6, 'stretch', 'us', '0.0115_in'],
    [-12e-6, 'stretch', 'metric', '−0.012_mm'],
    [13123, 'force', 'metric', '13_100_N'],
    [27, 'torque', 'us', '19.9_ft·lbf'],
    [0.253, 'angle', 'us', '14.5°'],
    [1, 'turns', 'us', '1_turn'],
    [0.5, 'turns', 'us', '0.5_turns'],
    [0.073, 'percent', 'metric', '7.3_%'],
    [585e-6, 'strain', 'metric', '585_microstrain'],
    [0.15, 'ratio', 'metric', '0.15'],
    [12, 'count', 'us', '12'],
    [Number.NaN, 'force', 'us', '–_lbf'],
  ] as const)('shows %f as %s (%s): %s', (value, kind, system, text) =>
    expect(spaced(formatQuantity(value, kind, system))).toBe(text),
  );

  it.each([
    [134.27e6, 8.3e6, 'metric', '134.3~±~8.3_MPa'],
    [134.27e6, 1.21e6, 'metric', '134.3~±~1.2_MPa'],
    [134.27e6, 8.3e6, 'us', '19_500~±~1200_psi'],
    [134.27e6, 43e6, 'metric', '134~±~43_MPa'],
    [134.27e6, 0, 'metric', '134_MPa'],
    [134.27e6, Number.NaN, 'metric', '134_MPa'],
    [Number.NaN, 8e6, 'metric', '–_MPa'],
  ] as const)(
    'lets the digits of %f follow its uncertainty %f (%s): %s',
    (value, uncertainty, system, text) =>
      expect(spaced(formatQuantity(value, 'stress', system, { uncertainty }))).toBe(text),
  );

  it('shows as many digits as are asked for', () =>
    expect(spaced(formatQuantity(105993104, 'pressure', 'us', { digits: 5 }))).toBe('15_373_psi'));
  it('trims nothing that was asked for', () =>
    expect(spaced(formatQuantity(0.035, 'length', 'metric', { digits: 3 }))).toBe('35.0_mm'));
});

describe('formatParts', () => {
  it('leaves out an uncertainty that is not given', () => {
    expect(formatParts(27, 'torque', 'metric')).toEqual({ number: '27.0', unit: 'N·m' });
    const parts = formatParts(27, 'torque', 'metric', { uncertainty: 1.1 });
    expect(parts).toEqual({ number: '27.0', uncertainty: '1.1', unit: 'N·m' });
  });
});

describe('formatRange', () => {
  it.each([
    [88.2e6, 122.4e6, 'stress', '88~to~122_MPa'],
    [62.557e6, 98.725e6, 'stress', '62.6~to~98.7_MPa'],
    [148.1e6, 148.4e6, 'stress', '148.1~to~148.4_MPa'],
    [120e6, 120e6, 'stress', '120_MPa'],
    [120e6, 120e6 + 1e-3, 'stress', '120_MPa'],
    [0.025, 0.05, 'length', '25~to~50_mm'],
    [-30e-6, 12e-6, 'stretch', '−0.030~to~0.012_mm'],
    [120e6, Number.POSITIVE_INFINITY, 'stress', '120~to~∞_MPa'],
    [1.2e6, Number.POSITIVE_INFINITY, 'stress', '1.20~to~∞_MPa'],
    [Number.NaN, Number.NaN, 'stress', '–_MPa'],
  ] as const)('shows %f to %f as %s: %s', (low, high, kind, text) =>
    expect(spaced(formatRange(low, high, kind, 'metric'))).toBe(text),
  );
});

describe('formatInput', () => {
  it.each([
    [0.52705, 'length', 'us', '20.75'],
    [0.5, 'length', 'metric', '500'],
    [13123, 'force', 'metric', '13123'],
    [27.116358966628, 'torque', 'metric', '27.12'],
    [-12e-6, 'stretch', 'metric', '-0.012'],
    [0, 'stretch', 'us', '0'],
    [4e2, 'stress', 'metric', '0.0004'],
    [1.5e30, 'force', 'metric', '1.5e+30'],
    [1e15 + 0.5, 'force', 'metric', '1000000000000000.5'],
    [1e-20, 'force', 'metric', '1e-20'],
    [Number.NaN, 'force', 'metric', ''],
  ] as const)('puts %f as %s (%s) into the box as %s', (value, kind, system, text) =>
    expect(formatInput(value, kind, system)).toBe(text),
  );

  it('is read back within half of the last decimal of the box', () =>
    fc.assert(
      fc.property(
        fc.double({ min: -1e7, max: 1e7, noNaN: true }),
        kinds,
        systems,
        (typed, kind, system) => {
          const amount = kind === 'count' ? Math.round(typed) : typed;
          const value = toSi(amount, kind, system);
          const text = formatInput(value, kind, system);
          const reading = parseQuantity(text, kind, system);
          if (!reading.ok) throw new Error(`${text}: ${reading.reason}`);
          const { inputDecimals } = displayOf(kind, system);
          const error = Math.abs(fromSi(reading.value, kind, system) - amount);
          expect(error).toBeLessThanOrEqual(0.5 * 10 ** -inputDecimals + 1e-14 * Math.abs(amount));
        },
      ),
    ));

  it('changes nothing when it is written, read and written again', () =>
    fc.assert(
      fc.property(
        fc.double({ min: -1e7, max: 1e7, noNaN: true }),
        kinds,
        systems,
        (typed, kind, system) => {
          const text = formatInput(toSi(Math.round(typed * 100) / 100, kind, system), kind, system);
          const reading = parseQuantity(text, kind, system);
          if (kind === 'count' && !reading.ok) return;
          expect(reading.ok && formatInput(reading.value, kind, system)).toBe(text);
        },
      ),
    ));
});

import unit from 'unitmath/es/UnitMath.js';
import { describe, expect, it } from 'vitest';
import * as factor from '../../src/units/conversions.ts';
import type { UnitSymbol } from '../../src/units/factors.ts';
import { UNITS } from '../../src/units/reading/table.ts';

const si = (symbol: UnitSymbol, amount = 1) => factor.siValue(amount, UNITS[symbol].factor);

/**
 * NIST Special Publication 811 (2008), appendix B.8, as printed (seven significant digits, or exact).
 * Partly seen in print, the rest from memory.
 */
const PRINTED: readonly [UnitSymbol, number][] = [
  ['in', 0.0254],
  ['ft', 0.3048],
  ['thou', 2.54e-5],
  ['lb', 0.4535924],
  ['oz', 0.02834952],
  ['lbf', 4.448222],
  ['kgf', 9.80665],
  ['ft·lbf', 1.355818],
  ['in·lbf', 0.1129848],
  ['kgf·m', 9.80665],
  ['psi', 6894.757],
  ['ksi', 6894757],
  ['kgf/mm²', 9806650],
  ['bar', 1e5],
  ['hp', 745.6999],
  ['lbf/in', 175.1268],
  ['lb/ft', 1.488164],
  ['lb/in³', 27679.9],
  ['ft/min', 0.00508],
  ['mph', 0.44704],
  ['km/h', 0.2777778],
  ['in²', 6.4516e-4],
  ['in⁴', 4.162314e-7],
  ['°', 0.01745329],
  ['r/min', 0.01666667],
];

/** The same to more digits: products of the exact inch, pound and standard gravity, worked in decimal arithmetic. */
const WORKED_OUT: readonly [UnitSymbol, number][] = [
  ['lbf', 4.4482216152605],
  ['psi', 6894.757293168362],
  ['ksi', 6894757.293168361],
  ['ft·lbf', 1.3558179483314003],
  ['in·lbf', 0.1129848290276167],
];

const BY_UNITMATH: readonly [UnitSymbol, string, string][] = [
  ['in', 'inch', 'm'],
  ['ft', 'ft', 'm'],
  ['thou', 'mil', 'm'],
  ['lb', 'lb', 'kg'],
  ['oz', 'oz', 'kg'],
  ['lbf', 'lbf', 'N'],
  ['ft·lbf', 'ft lbf', 'N m'],
  ['psi', 'psi', 'Pa'],
  ['ksi', 'kip/inch^2', 'Pa'],
  ['bar', 'bar', 'Pa'],
  ['hp', 'hp', 'W'],
  ['lbf/in', 'lbf/inch', 'N/m'],
  ['lb/ft', 'lb/ft', 'kg/m'],
  ['lb/in³', 'lb/inch^3', 'kg/m^3'],
  ['ft/min', 'ft/min', 'm/s'],
  ['mph', 'mi/hr', 'm/s'],
  ['in²', 'inch^2', 'm^2'],
  ['°', 'deg', 'rad'],
];

describe('conversion factors', () => {
  it.each(PRINTED)('%s is %f SI, as printed in NIST SP 811', (symbol, printed) => {
    const digits = printed.toExponential().split('e')[0]?.replace('.', '').length ?? 0;
    const rounded = Number(si(symbol).toPrecision(digits));
    expect(Math.abs(rounded / printed - 1)).toBeLessThan(1e-12);
  });

  it.each(WORKED_OUT)('%s is %f SI to the last digit', (symbol, exact) =>
    expect(Math.abs(si(symbol) / exact - 1)).toBeLessThan(4e-16),
  );

  it.each(BY_UNITMATH)('%s agrees with an independent table of units', (symbol, name, base) => {
    const theirs = unit(`1 ${name}`).to(base).value;
    expect(Math.abs(si(symbol) / theirs - 1)).toBeLessThan(2e-15);
  });

  it('takes a difference of 10 °F as 5.555… K, and 6.5e-6 per °F as 11.7e-6 per K (NIST SP 811, B.8)', () => {
    expect(si('°F', 10)).toBeCloseTo(5.555555555555555, 14);
    expect(si('µin/(in·°F)', 6.5)).toBeCloseTo(1.17e-5, 17);
  });

  it.each([
    [1.1, 'mm', 0.0011],
    [35, 'mm', 0.035],
    [205, 'GPa', 205e9],
    [20.75, 'in', 0.52705],
  ] as const)('%f %s is exactly the double nearest %f', (amount, symbol, value) =>
    expect(si(symbol, amount)).toBe(value),
  );

  it('multiplies, divides and scales factors', () => {
    expect(factor.times([2, 3], [5, 7])).toEqual([10, 21]);
    expect(factor.over([2, 3], [5, 7])).toEqual([14, 15]);
    expect(factor.kilo([2, 3])).toEqual([2000, 3]);
    expect(factor.milli([2, 3])).toEqual([2, 3000]);
    expect(factor.amountOf(0.0508, factor.inch)).toBe(2);
  });
});

import { describe, expect, it } from 'vitest';
import { dimensionOfUnit, findUnit, unitKey } from '../../../src/units/reading/lookup.ts';

describe('unitKey', () => {
  it.each([
    ['ft·lbf', 'FT-LBF', 'ft. lbf', 'ft lbf', 'ft*lbf', 'ft⋅lbf'],
    ['N/mm²', 'n/mm2', 'N/mm^2', 'N per mm²'],
    ['µm', 'μm', 'µM'],
    ['°C', 'ºC', '℃', '° c'],
    ['millimetre', 'Millimeter'],
    ['MPa', 'mpa', 'MPA', 'Mpa'],
  ])('is one for all spellings of %s', (first, ...others) => {
    for (const other of others) expect(unitKey(other)).toBe(unitKey(first));
  });

  it('keeps a product apart from a quotient', () =>
    expect(unitKey('lb-ft')).not.toBe(unitKey('lb/ft')));
});

describe('findUnit', () => {
  it.each([
    ['lb-ft', 'torque', 'ft·lbf'],
    ['foot-pounds', 'torque', 'ft·lbf'],
    ['Nm', 'torque', 'N·m'],
    ['newton meters', 'torque', 'N·m'],
    ['inch pounds', 'torque', 'in·lbf'],
    ['kg-m', 'torque', 'kgf·m'],
    ['lbs', 'force', 'lbf'],
    ['lbs', 'mass', 'lb'],
    ['"', 'length', 'in'],
    ['in.', 'length', 'in'],
    ['Inches', 'length', 'in'],
    ["'", 'length', 'ft'],
    ['thousandths', 'length', 'thou'],
    ['um', 'length', 'µm'],
    ['million psi', 'stress', 'Mpsi'],
    ['feet per minute', 'speed', 'ft/min'],
    ['rpm', 'rotation', 'r/min'],
    ['MN/m', 'stiffness', 'kN/mm'],
    ['sq in', 'area', 'in²'],
    ['mm2', 'area', 'mm²'],
    ['µε', 'ratio', 'microstrain'],
    ['deg', 'turns', '° of turn'],
    ['K', 'temperatureDifference', '°C'],
  ] as const)('reads %s as a unit of %s: %s', (text, dimension, symbol) =>
    expect(findUnit(text, dimension)).toBe(symbol),
  );

  it('knows no unit of another dimension', () => expect(findUnit('kg', 'length')).toBeUndefined());
});

describe('dimensionOfUnit', () => {
  it.each([
    ['kg', 'mass'],
    ['lb', 'mass'],
    ['N·m', 'torque'],
    ['°', 'angle'],
    ['turns', 'turns'],
    ['bar', 'stress'],
    ['parsec', undefined],
  ])('of %s is %s', (text, dimension) => expect(dimensionOfUnit(text)).toBe(dimension));
});

import { describe, expect, it } from 'vitest';
import type { UnitSymbol } from '../../../src/units/factors.ts';
import { KINDS, QUANTITY_KINDS } from '../../../src/units/kinds.ts';
import { ASKED } from '../../../src/units/reading/asked.ts';
import { DIMENSIONS, type DimensionName } from '../../../src/units/reading/dimensions.ts';
import { unitKey } from '../../../src/units/reading/lookup.ts';
import { UNITS } from '../../../src/units/reading/table.ts';

const SYMBOLS = Object.keys(UNITS) as UnitSymbol[];
const NAMES = Object.keys(DIMENSIONS) as DimensionName[];
const inUse = new Set<UnitSymbol>(NAMES.flatMap((name) => [...DIMENSIONS[name].units]));

describe('the table of units', () => {
  it.each(SYMBOLS)(
    'lists "%s" in some dimension, with a positive factor and no spelling twice',
    (symbol) => {
      const { one, many, factor, spellings } = UNITS[symbol];
      expect(inUse).toContain(symbol);
      expect(factor[0] / factor[1]).toBeGreaterThan(0);
      const keys = [symbol, ...new Set([one, many]), ...spellings].map(unitKey);
      if (symbol === '') return;
      const own = keys.filter((key) => key !== unitKey(symbol));
      expect(new Set(own).size).toBe(own.length);
    },
  );

  it.each(NAMES)('gives every spelling one meaning as %s', (name) => {
    const meanings = new Map<string, UnitSymbol>();
    for (const symbol of DIMENSIONS[name].units) {
      const { one, many, spellings } = UNITS[symbol];
      for (const spelling of [symbol, one, many, ...spellings]) {
        expect(meanings.get(unitKey(spelling)) ?? symbol).toBe(symbol);
        meanings.set(unitKey(spelling), symbol);
      }
    }
  });
});

describe('the kinds', () => {
  it.each(QUANTITY_KINDS)('%s is shown in units of its own dimension', (kind) => {
    const { units } = DIMENSIONS[ASKED[kind].dimension];
    expect(units).toContain(KINDS[kind].metric.unit);
    expect(units).toContain(KINDS[kind].us.unit);
  });
});

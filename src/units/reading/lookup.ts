/**
 * Finding a unit from what was typed, within one dimension.
 * Units: symbols of unit-table.ts. Source: common practice, no source, for the spellings.
 * Case is ignored, since phones capitalise as they please: `mpa` is MPa. No unit here differs from another by case alone.
 */

import type { UnitSymbol } from '../factors.ts';
import { DIMENSIONS, type DimensionName } from './dimensions.ts';
import { UNITS } from './table.ts';

/** The spelling reduced to what tells units apart: `Ft-lb`, `ft·lb` and `ft. lb` are one key. */
export function unitKey(text: string): string {
  return text
    .replace(/[º˚]/g, '°')
    .normalize('NFKC')
    .toLowerCase()
    .replace(/\bper\b/g, '/')
    .replace(/metre/g, 'meter')
    .replace(/[\s.·⋅∙•*×^()-]/g, '');
}

const DIMENSION_NAMES = Object.keys(DIMENSIONS) as readonly DimensionName[];

function spellingsOf(symbol: UnitSymbol): readonly string[] {
  const { one, many, spellings } = UNITS[symbol];
  return [symbol, one, many, ...spellings];
}

function keysOf(name: DimensionName): Map<string, UnitSymbol> {
  const entries = DIMENSIONS[name].units.flatMap((symbol) =>
    spellingsOf(symbol).map((spelling) => [unitKey(spelling), symbol] as const),
  );
  return new Map(entries);
}

const UNITS_BY_KEY = new Map(DIMENSION_NAMES.map((name) => [name, keysOf(name)]));

/** The unit of a dimension that was typed, or undefined; `text` may be in any usual spelling. */
export function findUnit(text: string, dimension: DimensionName): UnitSymbol | undefined {
  return UNITS_BY_KEY.get(dimension)?.get(unitKey(text));
}

/** The dimension that a typed unit belongs to, the commonest first, or undefined if no unit here is spelled so. */
export function dimensionOfUnit(text: string): DimensionName | undefined {
  return DIMENSION_NAMES.find((name) => findUnit(text, name) !== undefined);
}

/** Every unit beside the first of its dimension, with the factor between them, for the table of units. */
import { amountOf, siValue } from '../../units/conversions.ts';
import type { UnitSymbol } from '../../units/factors.ts';
import { formatNumber, THIN_SPACE } from '../../units/format-number.ts';
import { DIMENSIONS } from '../../units/reading/dimensions.ts';
import { UNITS } from '../../units/reading/table.ts';

/** One unit: its symbol, its name, what one of it is, what else is read as it. */
export interface UnitFactor {
  readonly symbol: string;
  readonly name: string;
  readonly equals: string;
  readonly spellings: string;
}

const MOST_DIGITS = 7;
const ROUNDING_NOISE = 1e-12;

/** The fewest digits that say the number, up to seven: an exact factor is written exactly. */
function digitsOf(amount: number): number {
  const counts = Array.from({ length: MOST_DIGITS }, (_, place) => place + 1);
  const isExact = (digits: number) =>
    Math.abs(Number(amount.toPrecision(digits)) / amount - 1) < ROUNDING_NOISE;
  return counts.find(isExact) ?? MOST_DIGITS;
}

function factorOf(symbol: UnitSymbol, first: UnitSymbol): UnitFactor {
  const { one, factor, spellings } = UNITS[symbol];
  const amount = amountOf(siValue(1, factor), UNITS[first].factor);
  const number = formatNumber(amount, { significant: digitsOf(amount) });
  return {
    symbol,
    name: one,
    equals: number + THIN_SPACE + first,
    spellings: spellings.join(', '),
  };
}

/** The units of each dimension that has more than one, the plain ratios left out. */
export function unitFactors(): readonly {
  readonly noun: string;
  readonly units: readonly UnitFactor[];
}[] {
  return Object.values(DIMENSIONS)
    .map(({ noun, units }) => ({
      noun,
      units: units.filter((symbol) => symbol in UNITS && UNITS[symbol].one),
    }))
    .filter(({ units }) => units.length > 1)
    .map(({ noun, units }) => ({
      noun,
      units: units.map((symbol) => factorOf(symbol, units[0] ?? symbol)),
    }));
}

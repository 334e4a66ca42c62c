/**
 * Several readings of one quantity in one box, as a person writes them down: `1.02 1.01 1.03`. Each may have its unit, or
 * the last one alone.
 * Units: SI out.
 * Source: JCGM 100:2008 (GUM) 4.2.3, from memory: their mean, and s/√n as its standard uncertainty.
 */
import { mean, standardDeviation } from '../core/summary.ts';
import type { QuantityKind, UnitSystem } from '../units/kinds.ts';
import { parseQuantity } from '../units/reading/parse-quantity.ts';
import { tidyText } from '../units/reading/tidy-text.ts';

/** What several readings come to. */
export interface Several {
  readonly count: number; // 2 or more
  readonly mean: number;
  readonly scatter: number; // standard uncertainty of the mean
  readonly low: number;
  readonly high: number;
}

const ONE = /((?:\d+[ -])?\d+\/\d+|[\d.,]*\d) ?([^\d\s;,.]*)/g;

/** Each number of a text with the unit behind it; nothing where something else stands there too. */
function partsOf(typed: string): readonly (readonly [number: string, unit: string])[] {
  const text = tidyText(typed);
  if (/[^\s;,]/.test(text.replace(ONE, ''))) return [];
  return [...text.matchAll(ONE)].map(([, number = '', unit = '']) => [number, unit]);
}

/** Whether a text is several numbers without a unit. */
export function areBareNumbers(typed: string): boolean {
  const parts = partsOf(typed);
  return parts.length > 1 && parts.every(([, unit]) => unit === '');
}

/** What several readings come to; undefined where the text is not that. */
export function severalReadings(
  typed: string,
  kind: QuantityKind,
  system: UnitSystem,
): Several | undefined {
  const parts = partsOf(typed);
  const shared = parts.at(-1)?.[1] ?? '';
  const values = parts.flatMap(([number, unit]) => {
    const read = parseQuantity(`${number} ${unit || shared}`, kind, system);
    return read.ok ? [read.value] : [];
  });
  if (values.length < 2 || values.length < parts.length) return undefined;
  return {
    count: values.length,
    mean: mean(values),
    scatter: standardDeviation(values) / Math.sqrt(values.length),
    low: Math.min(...values),
    high: Math.max(...values),
  };
}

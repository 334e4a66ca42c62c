/**
 * One box of the worksheet read: its SI value, or why it cannot be used, or what is odd about it.
 * Units: SI out.
 * Source: a tenfold step outside what is usual is taken for a slip of unit; common practice, no source.
 */
import type { InputValue } from '../core/worksheet.ts';
import { formatQuantity, formatRange } from '../units/format-quantity.ts';
import type { UnitSystem } from '../units/kinds.ts';
import { parseQuantity } from '../units/reading/parse-quantity.ts';
import type { QuantityField } from './field.ts';

/** What a box holds; `refusal` only without a value, `doubt` only with one. */
export interface BoxReading {
  readonly value: InputValue;
  readonly refusal?: string;
  readonly doubt?: string;
}

const BEYOND = 10; // times what is usual

function sign({ limit }: QuantityField, value: number): string | undefined {
  if (limit === 'positive' && value <= 0) return 'This must be more than 0.';
  if (limit === 'notNegative' && value < 0) return 'This cannot be negative.';
  return undefined;
}

function isBeyond({ usual: [low, high] }: QuantityField, value: number): boolean {
  if (value > BEYOND * high) return true;
  return low > 0 ? value < low / BEYOND : value < BEYOND * low;
}

function usualRange({ usual: [low, high], kind }: QuantityField, system: UnitSystem): string {
  return formatRange(low, high, kind, system);
}

/** Reads what was typed into a box; an empty box gives what it stands for. Never throws. */
export function readBox(typed: string, field: QuantityField, system: UnitSystem): BoxReading {
  if (typed.trim() === '') return { value: field.whenEmpty };
  const parsed = parseQuantity(typed, field.kind, system);
  if (!parsed.ok) return { value: undefined, refusal: parsed.reason };
  const { value } = parsed;
  const range = usualRange(field, system);
  const wrongSign = sign(field, value);
  if (wrongSign) return { value: undefined, refusal: `${wrongSign} Usual here: ${range}.` };
  const meant = formatQuantity(value, field.kind, system);
  if (isBeyond(field, value))
    return {
      value: undefined,
      refusal: `That is ${meant}. Usual here: ${range}. Check the unit.`,
    };
  const [low, high] = field.usual;
  if (value >= low && value <= high) return { value };
  return { value, doubt: `That is ${meant}. Usual here: ${range}.` };
}

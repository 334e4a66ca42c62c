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
import { type Several, severalReadings } from './several.ts';
import { isBareNumber } from './units.ts';

/** What a box holds; `refusal` only without a value, `doubt` only with one. */
export interface BoxReading {
  readonly value: InputValue;
  readonly scatter?: number; // standard uncertainty of the mean, where several readings are typed
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

const APART = 1.2; // times from the least of several readings to the largest: more is a slip of the pen

/** Reads several readings where the box takes them; elsewhere says what their mean is. */
function readSeveral(several: Several, field: QuantityField, system: UnitSystem): BoxReading {
  const { count, mean, scatter, low, high } = several;
  const text = formatQuantity(mean, field.kind, system);
  if (!field.several)
    return {
      value: undefined,
      refusal: `This box takes one number. The mean of your ${count} is ${text}.`,
    };
  if (low <= 0 || high > APART * low) {
    const range = formatRange(low, high, field.kind, system);
    return {
      value: undefined,
      refusal: `${range}: these are too far apart to be one size. Check them.`,
    };
  }
  const read = judged(mean, field, system);
  if (read.value === undefined) return read;
  return { ...read, scatter, doubt: `Mean of ${count}: ${text}. ${read.doubt ?? ''}`.trim() };
}

/** Reads what was typed into a box; an empty box gives what it stands for. Never throws. */
export function readBox(typed: string, field: QuantityField, system: UnitSystem): BoxReading {
  if (typed.trim() === '') return { value: field.whenEmpty };
  const parsed = parseQuantity(typed, field.kind, system);
  if (parsed.ok) return withInchPounds(typed, judged(parsed.value, field, system), field, system);
  const several = severalReadings(typed, field.kind, system);
  return several
    ? readSeveral(several, field, system)
    : { value: undefined, refusal: parsed.reason };
}

/** A bare torque that is too much for its box in the US may be one of a wrench with inch-pounds. */
function withInchPounds(
  typed: string,
  read: BoxReading,
  field: QuantityField,
  system: UnitSystem,
): BoxReading {
  if (system !== 'us' || field.kind !== 'torque' || !isBareNumber(typed)) return read;
  const asks = `Does your wrench have inch-pounds? Then write ${typed.trim()} in-lb.`;
  if (read.refusal) return { ...read, refusal: `${read.refusal} ${asks}` };
  return read.doubt ? { ...read, doubt: `${read.doubt} ${asks}` } : read;
}

/** A value as it is used, or refused, or doubted. */
function judged(value: number, field: QuantityField, system: UnitSystem): BoxReading {
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

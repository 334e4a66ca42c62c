/**
 * A quantity typed into a box: number and unit in, SI value or the reason why not out.
 * Units: the value is SI. Source: common practice, no source, for the spellings; factors from conversions.ts.
 * A unit that is typed overrides the unit system's own; a bare number is in the system's unit for that kind.
 */
import { siValue } from '../conversions.ts';
import { FACTORS, type UnitSymbol } from '../factors.ts';
import { displayOf, type QuantityKind, type UnitSystem } from '../kinds.ts';
import { ASKED, type Asked } from './asked.ts';
import { DIMENSIONS } from './dimensions.ts';
import { dimensionOfUnit, findUnit } from './lookup.ts';
import { leadingNumber, parseNumber } from './parse-number.ts';
import { type Reading, type Refusal, refusal } from './refusal.ts';
import { tidyText } from './tidy-text.ts';

const LONGEST_TEXT = 60;
const SCALE_HINT = ' For the pull on a scale marked in kilograms, write kgf.';
const FEET_AND_INCHES =
  /^(\d[^'a-z]*?) ?(?:'|ft\.?|feet|foot)[ -]?([\d.].*?) ?(?:"|in\.?|inch(?:es)?)?$/i;

function takes(kind: Asked, system: UnitSystem): string {
  const other = system === 'us' ? kind.metric : kind.us;
  const own = kind[system];
  return `${kind.noun}, such as ${own === other ? own : `${own} or ${other}`}`;
}

function feetAndInches(text: string): Reading | undefined {
  const [, feetText = '', inchesText = ''] = FEET_AND_INCHES.exec(text) ?? [];
  if (feetText === '') return undefined;
  const [feet, inches] = [parseNumber(feetText), parseNumber(inchesText)];
  if (!feet.ok) return feet;
  if (!inches.ok) return inches;
  return { ok: true, value: siValue(feet.value * 12 + inches.value, FACTORS.in) };
}

function misplacedUnit(text: string, unitText: string, kind: Asked, system: UnitSystem): Refusal {
  const dimension = dimensionOfUnit(unitText);
  const wanted = `this box takes ${takes(kind, system)}.`;
  if (dimension === undefined) {
    return refusal('unknownUnit', `“${unitText}” is not a unit known here; ${wanted}`);
  }
  const pull = dimension === 'mass' && kind.dimension === 'force' ? SCALE_HINT : '';
  return refusal('wrongKind', `“${text}” is ${DIMENSIONS[dimension].noun}; ${wanted}${pull}`);
}

function numberWithUnit(text: string, kind: Asked, bare: UnitSymbol, system: UnitSystem): Reading {
  const number = leadingNumber(text);
  if (!number.ok) return number;
  const unit = number.rest === '' ? bare : findUnit(number.rest, kind.dimension);
  if (unit === undefined) return misplacedUnit(text, number.rest, kind, system);
  return { ok: true, value: siValue(number.value, FACTORS[unit]) };
}

function withExample(found: Reading, kind: Asked, system: UnitSystem): Reading {
  if (found.ok || found.code !== 'notANumber') return found;
  return refusal(found.code, `${found.reason} This box takes ${takes(kind, system)}.`);
}

/** The SI value of a typed quantity, or why it is refused, in the reader's words; it never throws. */
export function parseQuantity(text: string, kindName: QuantityKind, system: UnitSystem): Reading {
  const kind = ASKED[kindName];
  if (text.length > LONGEST_TEXT) {
    return refusal('tooLong', `That is too long. This box takes ${takes(kind, system)}.`);
  }
  const tidied = tidyText(text);
  if (tidied === '') return refusal('empty', `This box is empty. It takes ${takes(kind, system)}.`);
  const compound = kind.dimension === 'length' ? feetAndInches(tidied) : undefined;
  const found = compound ?? numberWithUnit(tidied, kind, displayOf(kindName, system).unit, system);
  if (!found.ok) return withExample(found, kind, system);
  if (!Number.isFinite(found.value)) return refusal('tooLarge', `“${tidied}” is too large.`);
  if (kind.whole && !Number.isInteger(found.value)) {
    return refusal('notWhole', `“${tidied}” is not whole. This box takes ${takes(kind, system)}.`);
  }
  return found;
}

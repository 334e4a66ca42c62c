/**
 * A template's text with the numbers of a drawn question in it, in one unit system.
 * Units: SI in the values.
 * Source: definition.
 */
import { formatQuantity } from '../units/format-quantity.ts';
import type { UnitSystem } from '../units/kinds.ts';
import { kindOf, type Model, numberAt, type Values } from './define-model.ts';
import { pieces } from './problem.ts';

/** The text, each `{name}` of it written as a reader of the system reads it. @throws RangeError for a name that is no quantity */
export function inWords(text: string, model: Model, values: Values, system: UnitSystem): string {
  return pieces(text)
    .map((piece) => {
      if ('text' in piece) return piece.text;
      const { name, digits } = piece;
      return formatQuantity(numberAt(values, name), kindOf(model, name), system, { digits });
    })
    .join('');
}

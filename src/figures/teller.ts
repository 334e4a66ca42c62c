/**
 * Numbers of a model as a figure says and letters them: by their names, in the kind that the model gives each.
 * Units: SI in the state; text in the reader's units.
 * Source: definition.
 */
import { kindOf, type Model, numberAt, type QuantityOf } from '../models/define-model.ts';
import { formatQuantity } from '../units/format-quantity.ts';
import type { FigureState } from './figure.ts';

/** Text of a quantity by its name, with so many digits or as many as its kind has. */
export function teller<M extends Model>(model: M) {
  return (
    { values, system }: Pick<FigureState<M>, 'values' | 'system'>,
    name: QuantityOf<M>,
    digits?: number,
  ) => formatQuantity(numberAt(values, name), kindOf(model, name), system, { digits });
}

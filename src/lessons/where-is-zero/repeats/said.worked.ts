/**
 * What the text says of the first lot of repeats.
 * Units: m.
 * Source: first.worked.ts beside it.
 */
import { first } from './first.worked.ts';
import { typicalError } from './tally.ts';

/** Typical errors, by the names of the model’s outputs. */
export const said = {
  rulerError: typicalError(first, 'ruler'),
  fullError: typicalError(first, 'full'),
};

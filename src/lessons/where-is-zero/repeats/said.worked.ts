/**
 * What the text says of the first lot of repeats.
 * Units: m; shares of 1.
 * Source: first.worked.ts beside it.
 */
import { LOT } from '../taking.ts';
import { first } from './first.worked.ts';
import { typicalError } from './tally.ts';

/** Typical errors, and how often an interval held the truth, by the names of the model's outputs. */
export const said = {
  lot: LOT,
  needleError: typicalError(first, 'needle'),
  rulerError: typicalError(first, 'ruler'),
  classroomError: typicalError(first, 'classroom'),
  fullError: typicalError(first, 'full'),
  classroomHeld: first.rules.classroom.held / LOT,
  fullHeld: first.rules.full.held / LOT,
};

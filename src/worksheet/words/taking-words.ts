/** What is said of texts that a box or a list did not take. */
import type { Field } from '../../form/field.ts';
import { mostLetters } from '../../form/field.ts';
import { LISTS, type List } from '../../form/lists.ts';
import { type ListPath, type ListPattern, mostRows, patternOf } from '../../form/paths.ts';

/** That several lines were pasted where one can stand. */
export const SEVERAL_LINES =
  'Several lines or cells were pasted, and this box holds one. Nothing was taken; what stood here stays.';

/** That there is no box behind the last one. */
export const LAST_BOX = 'This is the last box. What is typed after it is not taken.';

/** That a text is too long for its box. */
export const tooLong = (field: Field): string =>
  `This box holds ${mostLetters(field)} letters. What is longer is not taken; what stood here stays.`;

/** What the rows of a list are. */
export const rowsOf = (list: ListPath): string =>
  (LISTS[patternOf(list) as ListPattern] as List).label;

/** That a list is full. */
export const listIsFull = (list: ListPath): string =>
  `The list is full: it holds ${mostRows(list)} ${rowsOf(list)}. What is typed after them is not taken.`;

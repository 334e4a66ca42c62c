/** What is asked where numbers in a column have no unit, below one that names its own. */
import { fieldAt } from '../../form/paths.ts';
import { unitLabel } from '../../units/label.ts';
import type { Shown } from '../state/shown.ts';
import type { ColumnAsked } from './unit-asked.ts';

/** The column's own unit. */
export const ownUnit = ({ kind }: Pick<ColumnAsked, 'kind'>, { system }: Shown): string =>
  unitLabel(kind, system);

/** The question; `first`: the first number that is asked about. */
export function unitQuestion(asked: ColumnAsked, first: string, shown: Shown): string {
  const { from, unit, rows } = asked;
  const [row = 0] = rows;
  const where = rows.length === 1 ? shown.row(row) : `${rows.length} rows`;
  const named = from < 0 ? `“${fieldAt(`use.${shown.load.name}`).label}”` : shown.row(from);
  return `You wrote ${unit} in ${named} and no unit in ${where}. Until you say, ${first} counts as ${first} ${ownUnit(asked, shown)}.`;
}

/** The button that writes a unit. */
export const unitButton = (unit: string, first: string, count: number): string =>
  count === 1 ? `It is ${first} ${unit}` : `They are ${unit}: write ${first} ${unit}`;

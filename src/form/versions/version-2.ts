/**
 * Version 2 of the file had one other band, in boxes of its own behind a choice; since then it is the first of a list.
 * Everything here is frozen: no name and no order is taken from the form of today.
 * Units: as typed.
 * Source: definition.
 */
import { isParts, type Parts } from '../box-by-box.ts';

const KIND = 'otherBand.kind';
const COLUMNS = ['bodyWidth', 'thickness', 'targetStress'];

/** The other band as a table of one row. Without its choice it was hidden, and stays where it was, where no box is. Never throws. */
export function otherBandAsList(found: Parts): Parts {
  const { typed, tables = {} } = found;
  if (!isParts(typed) || !isParts(tables) || typed[KIND] !== 'some') return found;
  const places = COLUMNS.map((column) => `otherBand.${column}`);
  const others = Object.entries(typed).filter(([at]) => at !== KIND && !places.includes(at));
  const row = places.map((place) => typed[place] ?? '');
  return {
    ...found,
    typed: Object.fromEntries(others),
    tables: { ...tables, bands: [COLUMNS, row] },
  };
}

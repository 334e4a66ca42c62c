/**
 * A list of the sheet as a table for other programs: titles with units, cells as they were typed.
 * Units: as typed; a bare number is in the unit of its title.
 * Source: RFC 4180 (`csv`), from memory; written by d3-dsv.
 */
import { csvFormatRows } from 'd3-dsv';
import { columnsWith } from '../../form/column-titles.ts';
import { cellsOf, type FieldPath, fieldAt, type ListPath } from '../../form/paths.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';

const LOOKS_LIKE_A_FORMULA = /^(?:[=@\t\r]|[+-](?![\d.,]))/; // which another program might run

function title(list: ListPath, cell: string, system: UnitSystem): string {
  const field = fieldAt(`${list}.0.${cell}` as FieldPath);
  const unit = 'kind' in field ? unitLabel(field.kind, system) : '';
  return unit === '' ? field.label : `${field.label} (${unit})`;
}

/** The table as text: with the torques, or with pressures in their place where there are no torques. */
export function csvOf(
  list: ListPath,
  cells: readonly (readonly string[])[],
  system: UnitSystem,
): string {
  const [torque, pressure] = (['torque', 'pressure'] as const).map((name) =>
    cellsOf(list).indexOf(name),
  );
  const has = (column = -1) => cells.some((row) => (row[column] ?? '') !== '');
  const columns = columnsWith(has(pressure) && !has(torque) ? 'pressure' : 'torque', list);
  const places = columns.map((cell) => cellsOf(list).indexOf(cell));
  const titles = columns.map((cell) => title(list, cell, system));
  const rows = cells.map((row) =>
    places
      .map((place) => row[place] ?? '')
      .map((text) => (LOOKS_LIKE_A_FORMULA.test(text) ? `'${text}` : text)),
  );
  return `${csvFormatRows([titles, ...rows])}\n`;
}

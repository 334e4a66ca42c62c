/**
 * A list of the sheet as a table for other programs: titles with units, cells as they were typed.
 * Units: as typed; a bare number is in the unit of its title.
 * Source: RFC 4180 (`csv`), from memory; written by d3-dsv.
 */
import { csvFormatRows } from 'd3-dsv';
import { cellsOf, type FieldPath, fieldAt, type ListPath } from '../../form/paths.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';

const LOOKS_LIKE_A_FORMULA = /^(?:[=@\t\r]|[+-](?![\d.,]))/; // which another program might run

function title(list: ListPath, cell: string, system: UnitSystem): string {
  const field = fieldAt(`${list}.0.${cell}` as FieldPath);
  const unit = 'kind' in field ? unitLabel(field.kind, system) : '';
  return unit === '' ? field.label : `${field.label} (${unit})`;
}

/** The table as text. */
export function csvOf(
  list: ListPath,
  cells: readonly (readonly string[])[],
  system: UnitSystem,
): string {
  const titles = cellsOf(list).map((cell) => title(list, cell, system));
  const rows = cells.map((row) =>
    row.map((text) => (LOOKS_LIKE_A_FORMULA.test(text) ? `'${text}` : text)),
  );
  return `${csvFormatRows([titles, ...rows])}\n`;
}

/**
 * Rows of cells out of a pasted text: of a spreadsheet, which puts tabs between cells and quotes round those that need
 * it, or of a list with semicolons. (A comma may be a decimal mark, so it divides nothing.)
 * Units: none.
 * Source: definition.
 */
import { dsvFormat } from 'd3-dsv';

/** The cells of a pasted text, row by row. */
export function pastedTable(text: string): readonly (readonly string[])[] {
  const table = dsvFormat(text.includes('\t') ? '\t' : ';');
  return table.parseRows(
    text.replace(/[\v\f\u0085\u2028\u2029]/g, '\n').replace(/[\r\n]+$/, ''),
    (row) => row.map((cell) => cell.trim()),
  );
}

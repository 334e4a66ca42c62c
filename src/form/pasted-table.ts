/**
 * Rows of cells out of a pasted text: of a spreadsheet, which puts tabs between cells and quotes round those that need
 * it; of a list with semicolons or commas; of columns parted by spaces, as a person types them. A comma may be a
 * decimal mark as well: it parts cells where a point marks the decimals, a space follows it, or there are several.
 * Units: none.
 * Source: definition; tables with quotes by d3-dsv.
 */
import { dsvFormat } from 'd3-dsv';

type Table = readonly (readonly string[])[];

/** What parts the cells of a text. */
type Divider = '\t' | ';' | ',' | ', ' | ' ' | 'every second comma';

const linesOf = (text: string) => text.split('\n').filter((line) => line.trim() !== '');
const commasIn = (line: string) => line.split(',').length - 1;
const hasDigit = (line: string) => /\d/.test(line);

/** How many commas each line of numbers has; 0 where they differ. */
function commas(lines: readonly string[]): number {
  const counts = new Set(lines.filter(hasDigit).map(commasIn));
  const [count = 0] = counts;
  return counts.size === 1 ? count : 0;
}

/** What parts the cells of a text with commas; none of its numbers has a point. */
function dividerAmongCommas(text: string): Divider {
  const lines = linesOf(text);
  const count = commas(lines);
  if (/,[ ]/.test(text)) return /\d,\d/.test(text) ? ', ' : ',';
  if (/\d +[.\d]/.test(text)) return ' ';
  if (count > 1 && count % 2 === 1) return 'every second comma';
  const hasTitles = lines.some((line) => !hasDigit(line) && commasIn(line) === count);
  return count > 1 || (count > 0 && hasTitles) ? ',' : ' ';
}

function dividerOf(text: string): Divider {
  if (text.includes('\t')) return '\t';
  if (text.includes(';')) return ';';
  if (!text.includes(',')) return ' ';
  return /\.\d/.test(text) && commas(linesOf(text)) > 0 ? ',' : dividerAmongCommas(text);
}

const NUMBER = /^[+\-−]?[\d.,]/;
const FRACTION = /^\d+\/\d+/;

/** Cells of a line without marks between them: each begins with a number, and takes the unit behind it along. */
function bySpaces(line: string): readonly string[] {
  const wide = line.trim().split(/ {2,}/);
  if (wide.length > 1) return wide;
  const words = line.trim().split(' ');
  if (!words.some((word) => NUMBER.test(word))) return words;
  const cells: string[] = [];
  for (const word of words) {
    const isNew = cells.length === 0 || (NUMBER.test(word) && !FRACTION.test(word));
    if (isNew) cells.push(word);
    else cells.push(`${cells.pop()} ${word}`);
  }
  return cells;
}

/** `1,5,0,47` as 1,5 and 0,47. */
const inPairs = (line: string): readonly string[] => line.match(/[^,]+(?:,[^,]+)?/g) ?? [];

/** The cells of a pasted text, row by row. */
export function pastedTable(text: string): Table {
  const plain = text.replace(/\r\n?|[\v\f\u0085\u2028\u2029]/g, '\n').replace(/\n+$/, '');
  const divider = dividerOf(plain);
  if (divider === ' ') return plain.split('\n').map(bySpaces);
  if (divider === ', ') return plain.split('\n').map((line) => line.split(/, +/));
  if (divider === 'every second comma') return plain.split('\n').map(inPairs);
  return dsvFormat(divider).parseRows(plain, (row) => row.map((cell) => cell.trim()));
}

/**
 * Changes to a sheet as typed: one box, one choice, one row; each gives a new sheet.
 * Units: none.
 * Source: definition.
 */
import type { ChoiceName, DialText, ReadingText, WayText, WorksheetText } from './text.ts';
import { blankReading, blankWay, MOST_ROWS, WORKSHEET_CHOICES, withoutTail } from './text.ts';

const blankDial: DialText = { dial: '', wholeTurns: '' };

function withRow<Row extends object>(
  rows: readonly Row[],
  place: number,
  change: Partial<Row>,
  blank: Row,
  most: number,
): readonly Row[] {
  if (place < 0 || place >= most) return rows;
  const filled = Array.from(
    { length: Math.max(rows.length, place + 1) },
    (_, i) => rows[i] ?? blank,
  );
  return withoutTail(filled.map((row, i) => (i === place ? { ...row, ...change } : row)));
}

/** The sheet with one row of its series changed. */
export function withReading(
  text: WorksheetText,
  place: number,
  change: Partial<ReadingText>,
): WorksheetText {
  const readings = withRow(text.readings, place, change, blankReading, MOST_ROWS.readings);
  return { ...text, readings };
}

/** The sheet with one way changed. */
export function withWay(
  text: WorksheetText,
  place: number,
  change: Partial<WayText>,
): WorksheetText {
  return { ...text, ways: withRow(text.ways, place, change, blankWay, MOST_ROWS.ways) };
}

function withWayReading(
  text: WorksheetText,
  way: number,
  place: number,
  change: Partial<DialText>,
): WorksheetText {
  const rows = text.ways[way]?.readings ?? [];
  const readings = withRow(rows, place, change, blankDial, MOST_ROWS.wayReadings);
  return withWay(text, way, { readings });
}

/** The sheet with a choice made; what may not be chosen changes nothing. */
export function withChoice(text: WorksheetText, name: ChoiceName, chosen: string): WorksheetText {
  const allowed: readonly string[] = WORKSHEET_CHOICES[name];
  if (!allowed.includes(chosen)) return text;
  return { ...text, choices: { ...text.choices, [name]: chosen } };
}

/** The sheet with what was typed at a path: a box, or a cell such as `readings.3.dial`. */
export function withTyped(text: WorksheetText, path: string, typed: string): WorksheetText {
  if (path === 'label') return { ...text, label: typed };
  if (path === 'tensioner.thread.designation') return { ...text, designation: typed };
  const [list, row, cell, wayRow, wayCell] = path.split('.');
  if (list === 'readings') return withReading(text, Number(row), { [cell ?? '']: typed });
  if (list === 'ways' && cell === 'readings')
    return withWayReading(text, Number(row), Number(wayRow), { [wayCell ?? '']: typed });
  if (list === 'ways') return withWay(text, Number(row), { [cell ?? '']: typed });
  const { [path]: _, ...others } = text.boxes;
  return { ...text, boxes: typed === '' ? others : { ...others, [path]: typed } };
}

/** What is typed at a path; empty where nothing is. */
export function typedAt(text: WorksheetText, path: string): string {
  if (path === 'label') return text.label;
  if (path === 'tensioner.thread.designation') return text.designation;
  const [list, row, cell, wayRow, wayCell] = path.split('.');
  if (list === 'readings') return text.readings[Number(row)]?.[cell as keyof ReadingText] ?? '';
  const way = list === 'ways' ? text.ways[Number(row)] : undefined;
  if (way && cell === 'readings')
    return way.readings[Number(wayRow)]?.[wayCell as keyof DialText] ?? '';
  if (list === 'ways') return way?.[cell as 'name' | 'torque'] ?? '';
  return text.boxes[path] ?? '';
}

/** The sheet with pasted rows of cells put in from one cell on, to the right and down. */
export function withPasted(
  text: WorksheetText,
  place: number,
  column: keyof ReadingText,
  cells: readonly (readonly string[])[],
): WorksheetText {
  const columns = (Object.keys(blankReading) as (keyof ReadingText)[]).slice();
  const first = columns.indexOf(column);
  return cells.reduce((sheet, row, i) => {
    const change = row
      .slice(0, columns.length - first)
      .map((cell, j) => [columns[first + j], cell]);
    return withReading(sheet, place + i, Object.fromEntries(change));
  }, text);
}

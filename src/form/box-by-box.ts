/**
 * Reads a sheet box by box: what can stand on the form is kept, everything else is set aside as it was found. A bad
 * box costs only itself; where a unit cannot be read, so does each bare number that was meant in it.
 * Units: as typed.
 * Source: definition.
 */
import type { QuantityKind } from '../units/kinds.ts';
import { parseQuantity } from '../units/reading/parse-quantity.ts';
import { documentOf, type WorksheetDocument } from './document.ts';
import { LONGEST_TEXT } from './field.ts';
import { findField, patternOf, rowsOnTheWay } from './paths.ts';
import { type Aside, AsideCollector } from './set-aside.ts';
import { mayStand, typedFrom } from './typed.ts';
import { isBare, KINDS_WITH_UNIT } from './units.ts';

/** Named parts of something from outside. */
export type Parts = Readonly<Record<string, unknown>>;

/** Whether a value has named parts. */
export const isParts = (value: unknown): value is Parts =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Boxes renamed since version 3 was first written: the old pattern, and today's. */
export type Renamed = Readonly<Record<string, string>>;

/** What a form had chosen before anyone chose, by its path of today. */
export type Preset = Readonly<Record<string, string>>;

const MOST_LOOKED_AT = 20_000; // boxes: the fullest sheet has half as many
const LONGEST_PATH = 80;

/** A path by today's name, its row numbers kept. */
function renamedTo(path: string, renamed: Renamed): string {
  const pattern = patternOf(path);
  const now = Object.hasOwn(renamed, pattern) ? renamed[pattern] : undefined;
  if (now === undefined) return path;
  const numbers = rowsOnTheWay(path).map(([, row]) => row);
  return now.replaceAll('*', () => numbers.shift() ?? '');
}

const isUnitOf = (kind: string, unit: unknown): unit is string =>
  KINDS_WITH_UNIT.has(kind) &&
  typeof unit === 'string' &&
  /^[\p{L}%°]/u.test(unit) &&
  parseQuantity(`1 ${unit}`, kind as QuantityKind, 'metric').ok;

class BoxByBox {
  readonly aside = new AsideCollector();
  private readonly good = new Map<string, string>();
  private readonly units = new Map<string, string>();
  private readonly renamed: Renamed;
  private looked = 0;

  constructor(renamed: Renamed) {
    this.renamed = renamed;
  }

  /** Named parts one by one; something else in their place is set aside whole. */
  each(place: string, value: unknown, take: (name: string, part: unknown) => void): void {
    if (isParts(value)) for (const name of Object.keys(value)) take(name, value[name]);
    else if (value !== undefined) this.aside.add(place, value);
  }

  unit(kind: string, unit: unknown): void {
    if (isUnitOf(kind, unit)) this.units.set(kind, unit);
    else this.aside.add(`units.${kind}`, unit);
  }

  box(place: string, value: unknown): void {
    if (value === '' || value === undefined) return;
    this.looked += 1;
    if (this.looked > MOST_LOOKED_AT) this.aside.count(1);
    else if (!this.isTaken(place, value)) this.aside.add(place, value);
  }

  private isTaken(place: string, text: unknown): boolean {
    if (typeof text !== 'string' || text.length > LONGEST_TEXT) return false;
    const path = place.length > LONGEST_PATH ? '' : renamedTo(place, this.renamed);
    if (!mayStand(path, text) || this.good.has(path) || this.hasLostItsUnit(path, text))
      return false;
    this.good.set(path, text);
    return true;
  }

  private hasLostItsUnit(path: string, text: string): boolean {
    const field = findField(path);
    if (!field || !('kind' in field) || !KINDS_WITH_UNIT.has(field.kind)) return false;
    return !this.units.has(field.kind) && isBare(text);
  }

  /** A table, whose first row names the columns. */
  table(list: string, table: unknown): void {
    if (!Array.isArray(table) || !Array.isArray(table[0])) {
      this.aside.add(list, table);
      return;
    }
    const [columns, ...rows] = table as [unknown[], ...unknown[]];
    for (const [row, cells] of rows.entries()) {
      if (!Array.isArray(cells)) this.box(`${list}.${row}`, cells);
      else
        for (const [at, cell] of cells.entries())
          this.box(`${list}.${row}.${typeof columns[at] === 'string' ? columns[at] : at}`, cell);
    }
  }

  get isEmpty(): boolean {
    return this.good.size === 0;
  }

  document(aside: Aside, preset: Preset): WorksheetDocument {
    const typed = typedFrom([...Object.entries(preset), ...this.good]);
    return documentOf(typed, Object.fromEntries(this.units), aside);
  }
}

/** What was set aside before, out of the sheet itself. */
function takeAside(into: AsideCollector, { aside }: Parts): void {
  const { kept, more } = isParts(aside) ? aside : {};
  for (const each of Array.isArray(kept) ? kept : []) {
    const { place, text } = isParts(each) ? each : {};
    if (typeof place === 'string' && typeof text === 'string') into.add(place, text);
    else into.count(1);
  }
  if (Number.isSafeInteger(more) && Number(more) > 0) into.count(Number(more));
}

/** The sheet of `units`, `typed`, `tables` and what was set aside before; undefined where no box of it can be read. Where nothing was chosen, what was preset stands. Never throws. */
export function boxByBox(
  found: Parts,
  renamed: Renamed,
  preset: Preset,
): WorksheetDocument | undefined {
  const { units, typed, tables, aside: _, ...others } = found;
  const reader = new BoxByBox(renamed);
  reader.each('units', units, (kind, unit) => reader.unit(kind, unit));
  reader.each('typed', typed, (place, text) => reader.box(place, text));
  reader.each('tables', tables, (list, table) => reader.table(list, table));
  reader.each('', others, (place, value) => reader.box(place, value));
  const isLost = reader.isEmpty && !reader.aside.isEmpty;
  takeAside(reader.aside, found);
  return isLost ? undefined : reader.document(reader.aside.all(), preset);
}

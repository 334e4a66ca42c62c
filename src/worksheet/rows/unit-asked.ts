/**
 * In which unit the numbers of a column are meant that have none, below one that names its own: asked once, and from the
 * answer on written behind each number that is typed below.
 */
import { signal } from '@preact/signals-core';
import type { QuantityKind } from '../../units/kinds.ts';
import type { SheetView } from '../state/view.ts';
import { type UnitAsked, unitAsked } from './column-units.ts';
import { type Column, cellIn, columnsOf, pathOf } from './columns.ts';

/** What is to be asked, and about which column; the load in use stands above its column, as row −1. */
export interface ColumnAsked extends UnitAsked {
  readonly cell: Column[0];
  readonly kind: QuantityKind;
}

interface Typing {
  /** The path of the box that is being typed in, whose number may get its unit yet. */
  readonly at: ReturnType<typeof signal<string | undefined>>;
  /** The units that were answered, by their columns. */
  readonly answered: Map<string, string>;
}

const typingOn = new WeakMap<SheetView, Typing>();

function typingOf(sheet: SheetView): Typing {
  const typing = typingOn.get(sheet) ?? { at: signal(undefined), answered: new Map() };
  typingOn.set(sheet, typing);
  return typing;
}

function asksOf(sheet: SheetView): readonly ColumnAsked[] {
  const cells = sheet.cells('readings');
  const { system } = sheet.shown();
  return columnsOf(sheet).flatMap(([cell, , kind]) => {
    if (!kind) return [];
    const inUse = kind === 'stretch' ? '' : sheet.text(`use.${kind}`);
    const texts = [inUse, ...cells.map((row) => cellIn(row, cell))];
    const asked = unitAsked(texts, kind, system);
    if (!asked) return [];
    const rows = asked.rows.map((at) => at - 1);
    return [{ ...asked, from: asked.from - 1, rows, cell, kind }];
  });
}

/** The first column with something to ask, but for the box that is being typed in. */
export function askedOn(sheet: SheetView): ColumnAsked | undefined {
  return asksOf(sheet)
    .map((asked) => {
      const at = typingOf(sheet).at.value;
      return { ...asked, rows: asked.rows.filter((row) => pathOf(row, asked.cell) !== at) };
    })
    .find(({ rows }) => rows.length > 0);
}

/** Notes the box that is being typed in; none once it is left. */
export function noteTyping(sheet: SheetView, path: string | undefined): void {
  typingOf(sheet).at.value = path;
}

const withUnit =
  (sheet: SheetView, { cell }: ColumnAsked, unit: string) =>
  (row: number) => {
    const path = pathOf(row, cell);
    return [path, `${sheet.text(path).trim()} ${unit}`] as const;
  };

/** Writes a unit behind all that was asked about, in one step that can be undone. */
export function answerUnit(sheet: SheetView, asked: ColumnAsked, unit: string): void {
  const texts = asked.rows.map(withUnit(sheet, asked, unit));
  typingOf(sheet).answered.set(asked.cell, unit);
  sheet.run({ do: 'fill', path: pathOf(asked.rows[0] ?? 0, asked.cell), texts });
}

/** Writes the unit that was answered before behind a number that was typed; nothing where there is nothing to ask. */
export function carryUnit(sheet: SheetView, path: string | undefined): void {
  for (const asked of asksOf(sheet)) {
    const row = asked.rows.find((each) => pathOf(each, asked.cell) === path);
    if (row === undefined || typingOf(sheet).answered.get(asked.cell) !== asked.unit) continue;
    const [at, text] = withUnit(sheet, asked, asked.unit)(row);
    sheet.run({ do: 'type', path: at, text });
  }
}

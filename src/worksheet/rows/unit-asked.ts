/**
 * In which unit the numbers of a column are meant that have none, below one that names its own: asked once, and from the
 * answer on written behind each number that is typed below.
 */
import { type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import type { LoadName } from '../../core/worksheet.ts';
import { lasting } from '../state/lasting.ts';
import type { SheetView } from '../state/view.ts';
import { type UnitAsked, unitAsked } from './column-units.ts';
import { type Column, cellIn, columnsOf, fillColumn, pathOf } from './columns.ts';

/** What is to be asked, and about which column; the load in use stands above its column, as row −1. */
export interface ColumnAsked extends UnitAsked {
  readonly cell: Column[0];
  readonly kind: LoadName | 'stretch';
}

interface Typing {
  /** The path of the box that is being typed in, whose number may get its unit yet. */
  readonly at: Signal<string | undefined>;
  /** The first column with something to ask, worked out once for all who show it. */
  readonly asked: ReadonlySignal<ColumnAsked | undefined>;
}

const typingOn = new WeakMap<SheetView, Typing>();

function typingOf(sheet: SheetView): Typing {
  const known = typingOn.get(sheet);
  if (known) return known;
  const at = signal<string | undefined>(undefined);
  const typing = { at, asked: lasting(() => firstAsked(sheet, at.value)) };
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

const firstAsked = (sheet: SheetView, typing: string | undefined): ColumnAsked | undefined =>
  asksOf(sheet)
    .map((asked) => ({
      ...asked,
      rows: asked.rows.filter((row) => pathOf(row, asked.cell) !== typing),
    }))
    .find(({ rows }) => rows.length > 0);

/** The first column with something to ask, but for the box that is being typed in. */
export const askedOn = (sheet: SheetView): ColumnAsked | undefined => typingOf(sheet).asked.value;

/** Notes the box that is being typed in; none once it is left. */
export function noteTyping(sheet: SheetView, path: string | undefined): void {
  typingOf(sheet).at.value = path;
}

const withUnit = (sheet: SheetView, { cell }: ColumnAsked, unit: string, row: number) =>
  `${sheet.text(pathOf(row, cell)).trim()} ${unit}`;

const BETWEEN = '; ';

/** The units that were answered, each behind the kind of its column, as the sheet keeps them. */
const answersOn = (sheet: SheetView): readonly string[] => sheet.text('unitsBelow').split(BETWEEN);

const answerOf = ({ kind }: ColumnAsked, unit: string) => `${kind} ${unit}`;

/** Writes a unit behind all that was asked about and keeps the answer, in one step that can be undone. */
export function answerUnit(sheet: SheetView, asked: ColumnAsked, unit: string): void {
  const rows = asked.rows.map((row) => [row, withUnit(sheet, asked, unit, row)] as const);
  const others = answersOn(sheet).filter((each) => each && !each.startsWith(answerOf(asked, '')));
  const answers = [...others, answerOf(asked, unit)].join(BETWEEN);
  fillColumn(sheet, asked.cell, rows, [['unitsBelow', answers]]);
}

/** Writes the unit that was answered before behind a number that was typed; nothing where there is nothing to ask. */
export function carryUnit(sheet: SheetView, path: string | undefined): void {
  for (const asked of asksOf(sheet)) {
    const row = asked.rows.find((each) => pathOf(each, asked.cell) === path);
    if (row === undefined || !answersOn(sheet).includes(answerOf(asked, asked.unit))) continue;
    const text = withUnit(sheet, asked, asked.unit, row);
    sheet.run({ do: 'type', path: pathOf(row, asked.cell), text });
  }
}

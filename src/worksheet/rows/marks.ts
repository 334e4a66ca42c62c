/** Dial readings that look like counted marks or thousandths in a column of lengths, and what they are as lengths. */
import { looksLikeMarks } from '../../core/worksheet.ts';
import { isBareNumber } from '../../form/units.ts';
import { fromSi, toSi } from '../../units/si-value.ts';
import type { SheetView } from '../state/view.ts';
import { cellIn, fillColumn, pathOf } from './columns.ts';

const WHOLE = /^[-+−]?\d+$/;

/** A count of marks in a row, and the length that is meant, in the unit of the column. */
export interface Mark {
  readonly row: number;
  readonly count: number;
  readonly length: string;
}

const lengthOf = (count: number, graduation: number): string =>
  String(Number((count * graduation).toPrecision(8)));

const dialTexts = (sheet: Pick<SheetView, 'cells'>) =>
  sheet
    .cells('readings')
    .map((texts, row) => ({ row, text: cellIn(texts, 'dial').trim() }))
    .filter(({ text }) => text !== '');

/** The rows that hold a mark; none where some reading is no whole number, or they may be lengths. */
export function marksOn(sheet: Pick<SheetView, 'cells' | 'shown' | 'worksheet'>): readonly Mark[] {
  const graduation = sheet.worksheet()?.rig.graduation;
  if (graduation === undefined) return [];
  const { system } = sheet.shown();
  const filled = dialTexts(sheet);
  if (!filled.every(({ text }) => WHOLE.test(text))) return [];
  const counts = filled.map(({ text }) => Number(text.replace('−', '-')));
  const dials = counts.map((count) => toSi(count, 'stretch', system));
  if (!looksLikeMarks(dials, graduation)) return [];
  const inUnit = fromSi(graduation, 'stretch', system);
  return filled.map(({ row }, at) => {
    const count = counts[at] as number;
    return { row, count, length: lengthOf(count, inUnit) };
  });
}

const IN_THOUSANDTHS = /thou|mil/i;

/** The texts of rows that count thousandths of an inch, which are too far as inches; none where some reading has another unit. */
export function thousandthsOn(
  sheet: Pick<SheetView, 'cells' | 'shown' | 'troubles'>,
): readonly (readonly [row: number, text: string])[] {
  if (sheet.shown().system !== 'us') return [];
  const filled = dialTexts(sheet);
  const { refusals } = sheet.troubles();
  const isRefused = ({ row }: { readonly row: number }) =>
    refusals[pathOf(row, 'dial')] !== undefined;
  if (!filled.some(isRefused)) return [];
  const bare = filled.filter(({ text }) => isBareNumber(text));
  const isElse = filled.some(({ text }) => !isBareNumber(text) && !IN_THOUSANDTHS.test(text));
  return isElse || !bare.some(isRefused) ? [] : bare.map(({ row, text }) => [row, `${text} thou`]);
}

/** Writes them as what they are, in one step that can be undone. */
export function writeThousandths(
  sheet: Pick<SheetView, 'run'>,
  rows: ReturnType<typeof thousandthsOn>,
): void {
  fillColumn(sheet, 'dial', rows);
}

/** Whether the readings look like marks. */
export const areMarks = (sheet: SheetView): boolean => marksOn(sheet).length > 0;

/** Writes the lengths that are meant, in one step that can be undone. */
export function writeLengths(sheet: Pick<SheetView, 'run'>, marks: readonly Mark[]): void {
  const lengths = marks.map(({ row, length }) => [row, length] as const);
  fillColumn(sheet, 'dial', lengths);
}

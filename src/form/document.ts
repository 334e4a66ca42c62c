/**
 * The worksheet as it is kept, linked and filed: our own versioned JSON. Text as typed, with the units that bare
 * numbers had when it was written, so that neither the reader's unit switch nor a later site changes their meaning.
 * Units: as typed.
 * Source: definition.
 */

import { IF_FILLED } from './lists.ts';
import { cellsOf, type FieldPath, type ListPath, PATTERNS } from './paths.ts';
import { type Aside, asideCount } from './set-aside.ts';
import { cellAt, cellsIn, entriesOf, type Typed, typedAt, typedFrom } from './typed.ts';
import type { BareUnits } from './units.ts';
import { inUnits } from './units.ts';

/** What every one of our files says it is. */
export const DOCUMENT_FORMAT = 'tension-notebook worksheet';

/** A table of texts; its first row names the columns. */
export type TextTable = readonly (readonly string[])[];

/** Version 3: what stands in no list by its path, and each list as a table by its own. */
export interface WorksheetDocument {
  readonly format: typeof DOCUMENT_FORMAT;
  readonly version: 3;
  readonly units: Readonly<Record<string, string>>;
  readonly typed: Readonly<Record<string, string>>;
  readonly tables: Readonly<Record<string, TextTable>>;
  /** What came with it and cannot stand on the form, until the reader has seen it. */
  readonly aside?: Aside;
}

function tableOf(typed: Typed, list: ListPath): TextTable {
  const rows = cellsIn(typed, list);
  const isKept = (cell: string, at: number) =>
    !IF_FILLED.includes(cell) || rows.some((row) => row[at] !== '');
  const kept = cellsOf(list).map(isKept);
  return [cellsOf(list), ...rows].map((row) => row.filter((_, at) => kept[at]));
}

/** The document of a sheet whose bare numbers are in `units`; the same sheet always gives the same text. */
export function documentOf(
  typed: Typed,
  units: BareUnits,
  aside: Aside | undefined = undefined,
): WorksheetDocument {
  const single = PATTERNS.filter((path): path is typeof path & FieldPath => path in typed);
  const lists = new Set(entriesOf(typed).flatMap(([path]) => cellAt(path)?.list ?? []));
  return {
    format: DOCUMENT_FORMAT,
    version: 3,
    units,
    typed: Object.fromEntries(single.map((path) => [path, typedAt(typed, path)])),
    tables: Object.fromEntries([...lists].sort().map((list) => [list, tableOf(typed, list)])),
    ...(aside && asideCount(aside) > 0 && { aside }),
  };
}

/** All texts of a document by their paths, of rows that are empty too. */
export function textsOf({
  typed,
  tables,
}: Pick<WorksheetDocument, 'typed' | 'tables'>): readonly (readonly [string, string])[] {
  const cells = Object.entries(tables).flatMap(([list, [columns = [], ...rows]]) =>
    rows.flatMap((texts, row) =>
      texts.map((text, column) => [`${list}.${row}.${columns[column] ?? ''}`, text] as const),
    ),
  );
  return [...Object.entries(typed), ...cells];
}

/** The sheet of a document, its bare numbers brought to `units` without changing what they mean. */
export const typedOf = (document: WorksheetDocument, units: BareUnits): Typed =>
  inUnits(typedFrom(textsOf(document)), document.units, units);

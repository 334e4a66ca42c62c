/**
 * What a worksheet from outside must look like: a link, a file, or the browser's own store, which others can write
 * too.
 * Units: none.
 * Source: definition.
 */
import { boxByBox, isParts, type Renamed } from './box-by-box.ts';
import { DOCUMENT_FORMAT, type WorksheetDocument } from './document.ts';
import type { SetAside } from './set-aside.ts';
import { fromVersion1 } from './versions/version-1.ts';
import { fromVersion2, PRESET_IN_VERSION_2 } from './versions/version-2.ts';

/** Why something is not a worksheet that this page can open. */
export type DocumentRefusal = 'notOurs' | 'newerVersion' | 'damaged';

/** A worksheet that was read, and what of it cannot stand on the form; the document carries that along. */
export interface ReadWorksheet {
  readonly document: WorksheetDocument;
  readonly setAside: readonly SetAside[];
}

const RENAMED: Renamed = {};

/** The worksheet in `value` as it is written today, or why there is none. Never throws. */
export function readDocument(
  value: unknown,
  renamed: Renamed = RENAMED,
): ReadWorksheet | DocumentRefusal {
  if (!isParts(value)) return 'notOurs';
  const { format, version, ...found } = value;
  if (format !== DOCUMENT_FORMAT || typeof version !== 'number') return 'notOurs';
  if (version > 3) return 'newerVersion';
  const second = version === 1 ? fromVersion1(found) : found;
  const [present, preset] = version < 3 ? [fromVersion2(second), PRESET_IN_VERSION_2] : [found, {}];
  if (version < 1 || !(isParts(present['typed']) || isParts(present['tables']))) return 'damaged';
  const document = boxByBox(present, renamed, preset);
  return document ? { document, setAside: document.aside?.kept ?? [] } : 'damaged';
}

/** Sheets from outside: a link, a file. Both are read box by box, and have a checksum. */
import type { WorksheetDocument } from '../../form/document.ts';
import { type DocumentRefusal, readDocument } from '../../form/schema.ts';
import { unsealed } from './file.ts';
import { unpacked } from './packing.ts';

const LARGEST_FILE = 20_000_000; // bytes: a backup of many sheets

/** A sheet that was brought; without a checksum, nobody can tell whether it is as it was sent. */
export interface Brought {
  readonly document: WorksheetDocument;
  readonly isChecked: boolean;
}

function brought(value: unknown, isChecked: boolean): Brought | DocumentRefusal {
  const read = readDocument(value);
  return typeof read === 'string' ? read : { document: read.document, isChecked };
}

/** What a link's fragment brings, or why nothing. Never throws. */
export async function fromLink(fragment: string): Promise<Brought | DocumentRefusal> {
  const found = await unpacked(fragment);
  if (found.kind === 'newer') return 'newerVersion';
  return found.kind === 'value' ? brought(found.value, found.isChecked) : 'damaged';
}

/** What a file brings: a sheet, all sheets of a backup, or why nothing. Never throws. */
export async function fromFile(
  file: File,
): Promise<Brought | { readonly sheets: readonly unknown[] } | DocumentRefusal> {
  if (file.size > LARGEST_FILE) return 'notOurs';
  const found = await file.text().then(unsealed, () => 'notOurs' as const);
  if (typeof found === 'string') return found;
  const { content, isChecked } = found;
  return 'sheets' in content ? content : brought(content.sheet, isChecked);
}

/** Sheets from outside: a link, a file, the browser's own store. All are read box by box; links and files have a checksum. */
import type { WorksheetDocument } from '../../form/document.ts';
import { type DocumentRefusal, readDocument } from '../../form/schema.ts';
import { textOf } from '../../form/set-aside.ts';
import { unsealed } from './file.ts';
import { unpacked } from './packing.ts';
import type { ShelfEntry } from './shelf.ts';

const LARGEST_FILE = 5_000_000; // bytes: every row full to the last letter

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

/** What a file brings, or why nothing. Never throws. */
export async function fromFile(file: File): Promise<Brought | DocumentRefusal> {
  if (file.size > LARGEST_FILE) return 'notOurs';
  const found = await file.text().then(unsealed, () => 'notOurs' as const);
  return typeof found === 'string' ? found : brought(found.sheet, found.isChecked);
}

/** An entry of the browser's store that is no sheet, as it lies there. */
export interface UnreadEntry {
  readonly id: string;
  readonly text: string;
}

/** What is on the shelf. */
export interface FromShelf {
  readonly sheets: ReadonlyMap<string, WorksheetDocument>;
  readonly unread: readonly UnreadEntry[];
}

/** The sheets on the shelf that can be read, and the texts of those that cannot. */
export function fromShelf(entries: readonly ShelfEntry[]): FromShelf {
  const sheets = new Map<string, WorksheetDocument>();
  const unread: UnreadEntry[] = [];
  for (const { id, value } of entries) {
    const read = readDocument(value);
    if (typeof read !== 'string') sheets.set(id, read.document);
    else unread.push({ id, text: textOf(value) ?? '' });
  }
  return { sheets, unread };
}

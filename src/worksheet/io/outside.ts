/** Sheets from outside: a link, a file, the browser's own store. All must pass the same schema; links and files have a checksum. */
import type { WorksheetDocument } from '../../form/document.ts';
import type { DocumentRefusal } from '../../form/schema.ts';
import { unsealed } from './file.ts';
import { unpacked } from './packing.ts';
import type { ShelfEntry } from './shelf.ts';

const LARGEST_FILE = 500_000; // bytes

/** A sheet that was brought; without a checksum, nobody can tell whether it is as it was sent. */
export interface Brought {
  readonly document: WorksheetDocument;
  readonly isChecked: boolean;
}

async function read(value: unknown): Promise<WorksheetDocument | DocumentRefusal> {
  const { readDocument } = await import('../../form/schema.ts');
  return readDocument(value);
}

async function brought(value: unknown, isChecked: boolean): Promise<Brought | DocumentRefusal> {
  const document = await read(value);
  return typeof document === 'string' ? document : { document, isChecked };
}

/** What a link's fragment brings, or why nothing; undefined for a fragment that is no link of ours. */
export async function fromLink(fragment: string): Promise<Brought | DocumentRefusal | undefined> {
  const found = await unpacked(fragment);
  if (found.kind === 'none') return undefined;
  if (found.kind === 'newer') return 'newerVersion';
  return found.kind === 'value' ? brought(found.value, found.isChecked) : 'damaged';
}

/** What a file brings, or why nothing. Never throws. */
export async function fromFile(file: File): Promise<Brought | DocumentRefusal> {
  if (file.size > LARGEST_FILE) return 'notOurs';
  const found = await file.text().then(unsealed, () => 'notOurs' as const);
  return typeof found === 'string' ? found : brought(found.sheet, found.isChecked);
}

/** The sheets on the shelf that can be read, and how many cannot. */
export async function fromShelf(
  entries: readonly ShelfEntry[],
): Promise<{ readonly sheets: ReadonlyMap<string, WorksheetDocument>; readonly unread: number }> {
  const sheets = new Map<string, WorksheetDocument>();
  for (const { id, value } of entries) {
    const document = await read(value);
    if (typeof document !== 'string') sheets.set(id, document);
  }
  return { sheets, unread: entries.length - sheets.size };
}

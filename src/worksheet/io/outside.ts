/** Sheets from outside: a link, a file, the browser's own store. All are checked by the same schema. */
import type { WorksheetDocument } from '../../form/document.ts';
import type { DocumentRefusal } from '../../form/schema.ts';
import { unpacked } from './packing.ts';
import type { ShelfEntry } from './shelf.ts';

const LARGEST_FILE = 500_000; // bytes

/** A sheet, a reason, or nothing there at all. */
export type Arrival = WorksheetDocument | DocumentRefusal | undefined;

async function checked(value: unknown): Promise<WorksheetDocument | DocumentRefusal> {
  const { readDocument } = await import('../../form/schema.ts');
  return readDocument(value);
}

/** What a link's fragment brings; undefined for a fragment that is no link of ours. */
export async function fromLink(fragment: string): Promise<Arrival> {
  const found = await unpacked(fragment);
  if (found.kind === 'none') return undefined;
  if (found.kind === 'newer') return 'newerVersion';
  return found.kind === 'value' ? checked(found.value) : 'damaged';
}

/** What a file brings. Never throws. */
export async function fromFile(file: File): Promise<WorksheetDocument | DocumentRefusal> {
  if (file.size > LARGEST_FILE) return 'notOurs';
  try {
    return await checked(JSON.parse(await file.text()));
  } catch {
    return 'notOurs';
  }
}

/** The sheets on the shelf that can be read, and how many cannot. */
export async function fromShelf(
  entries: readonly ShelfEntry[],
): Promise<{ readonly sheets: ReadonlyMap<string, WorksheetDocument>; readonly unread: number }> {
  const sheets = new Map<string, WorksheetDocument>();
  for (const { id, value } of entries) {
    const document = await checked(value);
    if (typeof document !== 'string') sheets.set(id, document);
  }
  return { sheets, unread: entries.length - sheets.size };
}

/** Sheets where this browser kept them before it had the database: an entry of its local storage each. They move. */
import type { SheetRecord } from './database.ts';
import type { Shelf } from './shelf.ts';

const PREFIX = 'worksheet.';

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text; // as it was found
  }
}

/** What still lies there; nothing where the browser forbids to look. */
function entries(): readonly (readonly [id: string, document: unknown])[] {
  try {
    return Object.entries<string>({ ...localStorage })
      .filter(([key]) => key.startsWith(PREFIX))
      .map(([key, text]) => [key.slice(PREFIX.length), parsed(text)]);
  } catch {
    return [];
  }
}

/**
 * Every record on the shelf, after what lay in local storage has moved there; a sheet that is on the shelf already
 * becomes an earlier version. Where the database is closed to us, what lies in local storage, and it stays there.
 */
export async function recordsAtStart(shelf: Shelf): Promise<readonly SheetRecord[]> {
  const old = entries();
  try {
    for (const [id, document] of old) {
      await shelf.keep({ id, over: () => document, isFirst: true });
      localStorage.removeItem(PREFIX + id);
    }
    return await shelf.records();
  } catch {
    return old.map(([id, document]) => ({ id, document, savedAt: 0, stamp: '' }));
  }
}

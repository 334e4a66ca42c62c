/**
 * What is not yet in the database when a page goes: put aside in local storage, which is written before the page is
 * gone, and taken in again at the next start.
 */
const PREFIX = 'worksheet-rescue.';

/** A sheet's last state, and the one that was last known to be kept. */
export interface Rescued {
  readonly id: string;
  readonly document: unknown;
  readonly from?: unknown;
  readonly removedAt?: number | undefined; // ms since 1970
}

/** Puts a sheet aside; where the browser forbids it, nothing more can be done. */
export function putAside(sheet: Rescued): void {
  try {
    localStorage.setItem(PREFIX + sheet.id, JSON.stringify(sheet));
  } catch {
    // The warning that the sheet is not kept is on the page.
  }
}

/** It is in the database now. */
export function dropAside(id: string): void {
  try {
    localStorage.removeItem(PREFIX + id);
  } catch {
    // There is nothing, then.
  }
}

/** Everything that lies aside. */
export function putAsideBefore(): readonly Rescued[] {
  try {
    return Object.entries<string>({ ...localStorage })
      .filter(([key]) => key.startsWith(PREFIX))
      .map(([key, text]) => ({ ...JSON.parse(text), id: key.slice(PREFIX.length) }) as Rescued);
  } catch {
    return [];
  }
}

/** Whether this reader has ever chosen a unit system. */

/** True where the browser remembers a choice. */
export function unitsAreRemembered(): boolean {
  try {
    return localStorage.getItem('units') !== null;
  } catch {
    return false;
  }
}

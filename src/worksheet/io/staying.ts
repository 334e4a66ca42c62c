/** Asks the browser, once, not to clear what is kept when it runs short of room; it may say no, and the site works on. */

let isAsked = false;

/** To be called when something has been kept. */
export function askToStay(): void {
  if (isAsked) return;
  isAsked = true;
  navigator.storage?.persist?.().catch(() => undefined);
}

/** Marks the page as answering, for whoever waits for that: a test, a style. */

/** Sets `data-live="ready"` on the root; call once everything on the page is bound. */
export function announceLive(): void {
  document.documentElement.dataset['live'] = 'ready';
}

/** Puts a text on the reader's clipboard. */

/** Whether the text is there now: a browser may refuse the page, or have no clipboard at all. */
export async function copied(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** Hands the reader a file to keep. */

const KEPT_FOR = 60_000; // ms, until the browser has surely taken it

/** Lets the browser save something under a name. */
export function saveFile(page: Document, name: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const anchor = page.createElement('a');
  anchor.href = address;
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(address), KEPT_FOR);
}

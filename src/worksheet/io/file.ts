/** A worksheet as a file on the reader's own device. Loaded when one is saved. */

/** The file's name: the mill's, in letters that every system takes. */
export function fileName(label: string): string {
  const plain = label
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return `${plain.slice(0, 60) || 'mill'}.worksheet.json`;
}

/** Hands a text to the browser as a file to keep. */
export function download(page: Document, name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const anchor = page.createElement('a');
  anchor.href = address;
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/**
 * A worksheet as a file on the reader's own device: the sheet in a cover that says what it is and holds a checksum.
 * Files of before are the bare sheet. Loaded when one is saved or opened.
 */
import { checksum } from './packing.ts';

const COVER = 'tension-notebook file';

/** A sheet out of a file; one without a cover cannot be checked. */
export interface Unsealed {
  readonly sheet: unknown;
  readonly isChecked: boolean;
}

const checkOf = (sheet: unknown) => checksum(JSON.stringify(sheet));

/** The text of a file that holds a sheet. */
export async function sealed(sheet: unknown): Promise<string> {
  const cover = { format: COVER, check: await checkOf(sheet), sheet };
  return `${JSON.stringify(cover, null, 2)}\n`;
}

/** The sheet in a file's text, or why there is none. Never throws. */
export async function unsealed(text: string): Promise<Unsealed | 'notOurs' | 'damaged'> {
  try {
    const whole: unknown = JSON.parse(text);
    if (typeof whole !== 'object' || whole === null) return 'notOurs';
    if (!('sheet' in whole || 'check' in whole)) return { sheet: whole, isChecked: false };
    const { format, check, sheet = null } = whole as Readonly<Record<string, unknown>>;
    if (format !== COVER || check !== (await checkOf(sheet))) return 'damaged';
    return { sheet, isChecked: true };
  } catch {
    return text.includes(COVER) ? 'damaged' : 'notOurs';
  }
}

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

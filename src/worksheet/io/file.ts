/**
 * A worksheet, or all of them, as a file on the reader's own device: in a cover that says what it is and holds a checksum.
 * Files of before are the bare sheet. Loaded when one is saved or opened.
 */
import { saveFile } from '../../live/saving.ts';
import { checksum } from './packing.ts';

const COVER = 'tension-notebook file';

/** What a file holds: one sheet, or all of them. */
export type Content = { readonly sheet: unknown } | { readonly sheets: readonly unknown[] };

/** Something out of a file; one without a cover cannot be checked. */
export interface Unsealed {
  readonly content: Content;
  readonly isChecked: boolean;
}

const checkOf = (content: Content) =>
  checksum(JSON.stringify('sheets' in content ? content.sheets : content.sheet));

/** The text of a file. */
export async function sealed(content: Content): Promise<string> {
  const cover = { format: COVER, check: await checkOf(content), ...content };
  return `${JSON.stringify(cover, null, 2)}\n`;
}

/** What is in a file's text, or why nothing. Never throws. */
export async function unsealed(text: string): Promise<Unsealed | 'notOurs' | 'damaged'> {
  try {
    const whole: unknown = JSON.parse(text);
    if (typeof whole !== 'object' || whole === null) return 'notOurs';
    const isCovered = ['sheet', 'sheets', 'check'].some((name) => name in whole);
    if (!isCovered) return { content: { sheet: whole }, isChecked: false };
    const { format, check, sheet = null, sheets } = whole as Readonly<Record<string, unknown>>;
    const content = Array.isArray(sheets) ? { sheets } : { sheet };
    if (format !== COVER || check !== (await checkOf(content))) return 'damaged';
    return { content, isChecked: true };
  } catch {
    return text.includes(COVER) ? 'damaged' : 'notOurs';
  }
}

/** The name of the file with all sheets, by its day. */
export const backupName = (now: Date): string =>
  `all-sheets-${now.toISOString().slice(0, 10)}.worksheets.json`;

/** Words as a file's name, in letters that every system takes. */
export const plainName = (words: string): string =>
  words
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);

/** The file's name: the mill's. */
export const fileName = (label: string): string => `${plainName(label) || 'mill'}.worksheet.json`;

/** Hands a text to the browser as a file to keep. */
export const download = (
  page: Document,
  name: string,
  text: string,
  type = 'application/json',
): void => saveFile(page, name, new Blob([text], { type }));

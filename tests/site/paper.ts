/** The setting card on paper: printed without a printer, and looked at as each paper has it; and the pages of what is printed. */
import { expect, type Page } from '@playwright/test';

const MARGIN = 8; // mm

/** What the card is made for, mm. */
export const PAPERS = { A5: [148, 210], A4: [210, 297], Letter: [215.9, 279.4] } as const;

/** One of them. */
export type Paper = keyof typeof PAPERS;

/** Presses the button, and waits until the card would be in the printer. */
export async function printCard(page: Page): Promise<void> {
  await page.evaluate(() => {
    document.documentElement.removeAttribute('data-printed');
    globalThis.print = () => document.documentElement.setAttribute('data-printed', '');
  });
  await page.getByRole('button', { name: 'Print the card' }).click();
  await expect(page.locator('[data-printed]')).toHaveCount(1);
  await page.emulateMedia({ media: 'print' });
}

/** Gives the page the size of a paper within its margins. */
export async function onPaper(page: Page, paper: Paper): Promise<void> {
  const [width, height] = PAPERS[paper].map((side) =>
    Math.floor(((side - 2 * MARGIN) * 96) / 25.4),
  );
  await page.setViewportSize({ width: width ?? 0, height: height ?? 0 });
}

/** Pages of a PDF as this browser writes it: one uncompressed object each. */
export const pagesOf = (pdf: Buffer): number =>
  (pdf.toString('latin1').match(/\/Type \/Page\b/g) ?? []).length;

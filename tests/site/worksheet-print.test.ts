/** The setting card prints on one sheet, alone, on both sizes of paper. */
import { expect, test } from '@playwright/test';
import { openWorksheet } from './worksheet-page.ts';

/** Pages of a PDF as this browser writes it: one uncompressed object each. */
const pagesOf = (pdf: Buffer): number =>
  (pdf.toString('latin1').match(/\/Type \/Page\b/g) ?? []).length;

for (const format of ['A4', 'Letter'] as const) {
  test(`the card fills one ${format} page`, async ({ page }) => {
    await openWorksheet(page);
    await page.locator('.desk-offer button').first().click();
    await page.evaluate(() => {
      globalThis.print = () => {};
    });
    const whole = pagesOf(await page.pdf({ format, preferCSSPageSize: true }));
    expect(whole).toBeGreaterThan(1);
    await page.getByRole('button', { name: 'Print the card' }).click();
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('.card')).toBeVisible();
    await expect(page.locator('.paper')).toBeHidden();
    // Making the PDF ends the printing, after which the sheet is what prints again.
    expect(pagesOf(await page.pdf({ format, preferCSSPageSize: true }))).toBe(1);
    await expect(page.locator('.paper')).toBeVisible();
    await expect(page.locator('.card')).toBeHidden();
  });
}

/** The plan of a measurement as a person uses it, and its sheet to take along. */
import { expect, type Page } from '@playwright/test';
import { openLive } from './open-live.ts';
import { openWorksheet } from './worksheet-page.ts';

/** Opens the plan of the mill that fits the units, all parts open. */
export async function openPlan(page: Page): Promise<void> {
  await openWorksheet(page);
  await page.locator('.desk-offer button').first().click();
  const fold = page.getByText('Plan your measurement before you go out');
  if (!(await fold.isVisible())) await page.locator('#rig > details > summary').click();
  await fold.click();
  await expect(page.locator('.plan')).toBeVisible();
}

/** A plan on a sheet with nothing in it. */
export async function openEmptyPlan(page: Page): Promise<void> {
  await openLive(page, 'worksheet/#plan');
  await expect(page.locator('.plan')).toBeVisible();
}

/** What stands in a place of the sheet to take along, with plain spaces. */
export async function printedTexts(page: Page, place: string): Promise<readonly string[]> {
  const texts = await page.locator(`.along-page ${place}`).allTextContents();
  return texts.map((text) => text.replace(/\s+/g, ' ').trim());
}

/** Has the sheet to take along drawn, as for a printer. */
export async function printPlan(page: Page): Promise<void> {
  await page.emulateMedia({ media: 'screen' });
  await page.evaluate(() => {
    globalThis.print = () => {};
  });
  await page.getByRole('button', { name: 'Print a sheet to take along' }).click();
}

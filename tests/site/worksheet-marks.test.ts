/** Dial readings that were written down in marks, and a row that is wrong: what is asked and said first. */
import { expect, type Page, test } from '@playwright/test';
import { openWorksheet } from './worksheet-page.ts';

const MARKS = ['20', '9', '5', '2', '31', '28', '24', '19', '13', '8'];

const dial = (page: Page, row: number) => page.locator(`#box-readings-${row}-dial`);

async function openMill(page: Page): Promise<void> {
  await openWorksheet(page);
  await page.locator('.desk-offer button').first().click();
  await expect(dial(page, 0)).not.toHaveValue('');
}

test('readings in marks are asked about before anything is said of rows, and become lengths that can be undone', async ({
  page,
}) => {
  await openMill(page);
  for (const [row, mark] of MARKS.entries()) await dial(page, row).fill(mark);
  const asked = page.locator('.marks-asked');
  await expect(asked).toContainText(/Are these marks or mm\?.* a mark of your dial is 0\.01\smm/);
  await expect(page.locator('#readings .advice')).toContainText('read in marks', {
    timeout: 20_000,
  });
  await expect(page.locator('#readings .row-trouble')).toHaveCount(0);
  await asked.getByRole('button', { name: /^They are marks: write 0\.2\smm for 20$/ }).click();
  await expect(dial(page, 0)).toHaveValue('0.2');
  await expect(dial(page, 9)).toHaveValue('0.08');
  await expect(asked).toBeEmpty();
  await page.keyboard.press('Control+z');
  await expect(dial(page, 0)).toHaveValue('20');
  await expect(asked.getByRole('button')).toBeVisible();
});

test('a wrong row is to be put right before any advice to measure again', async ({ page }) => {
  await openMill(page);
  const text = await dial(page, 6).inputValue();
  await dial(page, 6).fill(`${Number(text) - 0.4}`);
  const advice = page.locator('#readings .advice');
  await expect(advice).toContainText('Check row 7 for a wrong digit', { timeout: 20_000 });
  await expect(advice).not.toContainText('gloves');
});

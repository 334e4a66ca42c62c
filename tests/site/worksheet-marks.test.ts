/** Dial readings that were written down in marks, or without the turns of the hand, and a row that is wrong: what is asked and said first. */
import { expect, type Page } from '@playwright/test';
import { test } from './kept-page.ts';
import { box, openWorksheet, resultText, withExample } from './worksheet-page.ts';

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

test('turns of the hand that lack after it passed zero are led to, filled in with one press, and undone in one step', async ({
  page,
}) => {
  await withExample(page);
  const turns = (row: number) => box(page, `readings.${row}.wholeTurns`);
  const stress = await resultText(page, 'stress');
  for (let row = 0; row < 10; row += 1) {
    const shown = (Number(await dial(page, row).inputValue()) + 0.59) % 1; // set anew, the hand passes zero on its way down
    await dial(page, row).fill(shown.toFixed(3));
  }
  await expect.poll(() => resultText(page, 'verdict')).toContain('The measurement is no use');
  const lead = 'Fill in the turns of the hand first';
  await page.locator('#readings > details > summary').click();
  await page.locator('#answers').getByRole('link', { name: lead }).click();
  await expect(page.locator('#readings > details')).toHaveAttribute('open');
  await page.locator('#readings').getByRole('link', { name: lead }).click();
  const asked = page.locator('#turns-asked');
  await expect(asked).toBeInViewport();
  await expect(asked).toContainText('The hand seems to have passed zero just before row 6:');
  await asked.getByRole('button', { name: 'Fill in the turns in 5 rows' }).click();
  for (let row = 0; row < 10; row += 1) await expect(turns(row)).toHaveValue(row < 5 ? '0' : '1');
  await expect(asked).toBeEmpty();
  await expect(page.getByRole('link', { name: lead })).toHaveCount(0);
  expect(await resultText(page, 'stress')).toBe(stress);
  await page.keyboard.press('Control+z');
  for (let row = 5; row < 10; row += 1) await expect(turns(row)).toHaveValue('0');
  await expect(asked).not.toBeEmpty();
});

test('a measurement that is no use is told once over the answers, with what to do about it', async ({
  page,
}) => {
  await withExample(page);
  for (let row = 0; row < 10; row += 1) {
    const shown = (Number(await dial(page, row).inputValue()) + 0.59) % 1; // passes zero before row 6
    await dial(page, row).fill(shown.toFixed(3));
    await box(page, `readings.${row}.wholeTurns`).fill('');
  }
  const [answers, asked] = [page.locator('#answers'), page.locator('#turns-asked')];
  await expect(answers).toContainText('Fill in the turns of the hand first');
  await expect(answers).not.toContainText(
    /The dial seems (to have moved the other way|a whole turn short)/,
  );
  await expect(answers.locator('[data-answer="setting"]')).toContainText('Not yet: see above.');
  await box(page, 'rig.travelPerTurn').fill('');
  await expect(asked).toContainText('The hand may have passed zero just before row 6:');
  await asked.getByRole('link', { name: 'Enter the travel in one turn' }).click();
  await expect(page.locator('#rig')).toBeInViewport();
  await expect(answers).toContainText('Enter the travel in one turn of the hand first');
  await expect(answers).not.toContainText('moved the other way');
  await box(page, 'rig.travelPerTurn').fill('1');
  await asked.getByRole('button', { name: 'Fill in the turns in 5 rows' }).click();
  await expect.poll(() => resultText(page, 'stress')).toContain('106.8 MPa');
});

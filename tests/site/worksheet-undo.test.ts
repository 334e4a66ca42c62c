/** Undo and redo everywhere on the sheet, and two tabs on one sheet: nothing is emptied, overwritten or lost. */
import { expect, type Page, test } from '@playwright/test';
import { waitUntilLive } from './open-live.ts';
import { openWorksheet, resultText } from './worksheet-page.ts';

const box = (page: Page, path: string) => page.locator(`#box-${path.replaceAll('.', '-')}`);
const spoken = (page: Page) => page.locator('.desk [role="status"].visually-hidden');

async function paste(page: Page, text: string): Promise<void> {
  await page.evaluate((pasted) => {
    const data = new DataTransfer();
    data.setData('text/plain', pasted);
    document.activeElement?.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
    );
  }, text);
}

test('undo by key takes a paste back whole, and leaves every other box alone', async ({ page }) => {
  await openWorksheet(page);
  await box(page, 'band.thickness').pressSequentially('1.05');
  await box(page, 'readings.1.dial').pressSequentially('0.9');
  await box(page, 'readings.0.torque').focus();
  await paste(page, '1.5\t0.470\r\n3\t0.475');
  await expect(box(page, 'readings.1.dial')).toHaveValue('0.475');

  await page.keyboard.press('Control+z');
  await expect(box(page, 'readings.1.dial')).toHaveValue('0.9');
  await expect(box(page, 'readings.0.torque')).toHaveValue('');
  await expect(box(page, 'readings.0.torque')).toBeFocused();
  await expect(box(page, 'band.thickness')).toHaveValue('1.05');
  await expect(spoken(page)).toHaveText('Undone: what was pasted from row 1, torque on.');

  await page.keyboard.press('Control+Shift+z');
  await expect(box(page, 'readings.1.dial')).toHaveValue('0.475');
  for (let i = 0; i < 3; i += 1) await page.keyboard.press('Control+z');
  await expect(box(page, 'band.thickness')).toHaveValue('');
  await expect(box(page, 'band.thickness')).toBeFocused();
  for (let i = 0; i < 3; i += 1) await page.keyboard.press('Control+y');
  await expect(box(page, 'readings.0.dial')).toHaveValue('0.470');
});

test('what is typed into one box is one step, and can be typed on after an undo', async ({
  page,
}) => {
  await openWorksheet(page);
  const width = box(page, 'band.bodyWidth');
  await width.pressSequentially('29');
  await box(page, 'band.thickness').pressSequentially('1.5');
  await page.keyboard.press('Control+z');
  await expect(box(page, 'band.thickness')).toHaveValue('');
  await page.keyboard.type('1');
  await expect(box(page, 'band.thickness')).toHaveValue('1');
  await expect(width).toHaveValue('29');
  expect(await resultText(page, 'section')).toContain('29.0 mm²');
});

test('the buttons undo and redo a choice, and say so', async ({ page }) => {
  await openWorksheet(page);
  const [undo, redo] = ['Undo', 'Redo'].map((name) => page.getByRole('button', { name }));
  if (!undo || !redo) throw new Error('the desk must have both buttons');
  await expect(undo).toBeDisabled();
  await page.getByLabel('wood').check();
  await undo.click();
  await expect(page.getByLabel('steel', { exact: true })).toBeChecked();
  await expect(spoken(page)).toHaveText('Undone: material of the bar, now steel.');
  await expect(undo).toBeDisabled();
  await redo.click();
  await expect(page.getByLabel('wood')).toBeChecked();
});

test('a second tab does not overwrite what is typed here; both are kept', async ({
  page,
  context,
}) => {
  await openWorksheet(page);
  await box(page, 'label').fill('Mill');
  const other = await context.newPage();
  await openWorksheet(other);
  await expect(box(other, 'label')).toHaveValue('Mill');
  await box(other, 'band.thickness').fill('1.1');
  await expect(page.locator('.desk-notice')).toContainText('in another tab too');
  await expect(box(page, 'band.thickness')).toHaveValue('');
  await box(page, 'band.thickness').fill('0.9');
  await expect(box(other, 'band.thickness')).toHaveValue('1.1');

  await other.reload();
  await waitUntilLive(other);
  const picker = other.locator('.desk-picker select');
  await expect(picker.locator('option')).toHaveText(['Mill', 'Mill (2)']);
  const found: string[] = [];
  for (const name of ['Mill', 'Mill (2)']) {
    await picker.selectOption({ label: name });
    found.push(await box(other, 'band.thickness').inputValue());
  }
  expect(found.sort()).toEqual(['0.9', '1.1']);
});

test('a tab in which nothing was typed follows, and says so', async ({ page, context }) => {
  await openWorksheet(page);
  await box(page, 'label').fill('Mill');
  const other = await context.newPage();
  await openWorksheet(other);
  await box(page, 'band.thickness').fill('1.1');
  await expect(box(other, 'band.thickness')).toHaveValue('1.1');
  await expect(other.locator('.desk-notice')).toContainText('This tab now shows that version');
});

/** Undo and redo everywhere on the sheet, and two tabs on one sheet: nothing is emptied, overwritten or lost. */
import { expect, type Page } from '@playwright/test';
import { test } from './kept-page.ts';
import { waitUntilLive } from './open-live.ts';
import { box, openDesk, openWorksheet, resultText } from './worksheet-page.ts';

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
  await expect(spoken(page)).toHaveText('Undone: what was put in from row 1, torque on.');

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

/** Two tabs with one sheet open. */
async function twoTabs(page: Page): Promise<Page> {
  await openWorksheet(page);
  await box(page, 'label').fill('Mill');
  await expect(page.locator('.desk-picker .hint')).toContainText('Saved');
  const other = await page.context().newPage();
  await openWorksheet(other);
  await expect(box(other, 'label')).toHaveValue('Mill');
  return other;
}

test('what another tab types comes over box by box, and both say so', async ({ page }) => {
  const other = await twoTabs(page);
  await box(other, 'band.thickness').fill('1.1');
  await expect(box(page, 'band.thickness')).toHaveValue('1.1');
  await expect(page.locator('.desk-notice')).toContainText('changed in another tab too');
  await box(page, 'band.bodyWidth').fill('29');
  await expect(box(other, 'band.bodyWidth')).toHaveValue('29');
  await expect(other.locator('.desk-notice')).toContainText('changed in another tab too');
});

test('two tabs typing at the same time have all thirty texts and numbers right', async ({
  page,
}) => {
  const other = await twoTabs(page);
  const wanted: (readonly [string, string])[] = [];
  for (let row = 0; row < 10; row += 1)
    for (const [place, cell] of ['torque', 'dial', 'wholeTurns'].entries()) {
      const path = `readings.${row}.${cell}`;
      const text = `${row + 1}.${place}`;
      const tab = (row + place) % 2 === 0 ? page : other;
      await tab.evaluate(
        ([id, typed]) => {
          const input = document.querySelector<HTMLInputElement>(`#${id}`);
          if (!input) return;
          input.value = `${typed}`;
          input.dispatchEvent(new Event('input', { bubbles: true }));
        },
        [`box-${path.replaceAll('.', '-')}`, text],
      );
      wanted.push([path, text]);
    }
  for (const tab of [page, other])
    for (const [path, text] of wanted) await expect(box(tab, path)).toHaveValue(text);
  await page.reload();
  await waitUntilLive(page);
  for (const [path, text] of wanted) await expect(box(page, path)).toHaveValue(text);
});

test('a deleted sheet is in the bin after a reload, an earlier state among the versions', async ({
  page,
}) => {
  await twoTabs(page).then((other) => other.close());
  await page.reload();
  await waitUntilLive(page);
  await box(page, 'label').fill('Mill anew');
  await page.reload();
  await waitUntilLive(page);
  await openDesk(page);
  await page.locator('.desk-keeping summary').click();
  const versions = page.locator('.desk-keeping ul').first().getByRole('button');
  await versions.click();
  await expect(box(page, 'label')).toHaveValue('Mill');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(box(page, 'label')).toHaveValue('Mill anew');
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await page.reload();
  await waitUntilLive(page);
  await expect(box(page, 'label')).toHaveValue('');
  await openDesk(page);
  await page.locator('.desk-keeping summary').click();
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(box(page, 'label')).toHaveValue('Mill anew');
});

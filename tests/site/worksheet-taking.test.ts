/** Readings pasted, typed by a gauge, typed too soon: nothing is lost, cut or joined without a word. */
import { expect, type Page } from '@playwright/test';
import { test } from './kept-page.ts';
import { waitUntilLive } from './open-live.ts';
import { failAtFaults, openWorksheet } from './worksheet-page.ts';

const idOf = (path: string) => `#box-${path.replaceAll('.', '-')}`;
const box = (page: Page, path: string) => page.locator(idOf(path));
const told = (page: Page) => page.locator('.not-taken');

/** Pastes as the browser does: what the page leaves alone goes into the box, without its line breaks. */
async function paste(page: Page, path: string, text: string): Promise<void> {
  await box(page, path).focus();
  await page.evaluate((pasted) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', pasted);
    const event = new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true });
    if (document.activeElement?.dispatchEvent(event))
      document.execCommand('insertText', false, pasted.replaceAll(/[\r\n]/g, ''));
  }, text);
}

const numbers = (count: number) => Array.from({ length: count }, (_, at) => `${at + 1}`);

test.beforeEach(({ page }) => failAtFaults(page));

test.describe('with a clipboard', () => {
  test.use({ permissions: ['clipboard-read', 'clipboard-write'] });

  test('300 rows are taken; of 2300 each that is not is named and can be copied', async ({
    page,
  }) => {
    await openWorksheet(page);
    await paste(page, 'readings.0.torque', numbers(300).join('\n'));
    await expect(box(page, 'readings.299.torque')).toHaveValue('300');
    await page
      .getByRole('button', { name: 'Rows 26 to 275, 125 with a remark: show the next 25' })
      .click();
    await expect(box(page, 'readings.49.torque')).toHaveValue('50');
    await box(page, 'readings.49.torque').press('Enter');
    await expect(box(page, 'readings.50.torque')).toBeFocused();
    await box(page, 'readings.275.torque').press('ArrowUp');
    await expect(box(page, 'readings.274.torque')).toBeFocused();
    await expect(page.locator('.readings tbody tr')).not.toHaveCount(301);
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    await expect(
      page.locator('.readings input[data-path^="readings."][data-path$=".torque"]'),
    ).toHaveCount(301);
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    await expect(
      page.getByRole('button', { name: 'Rows 76 to 250, 100 with a remark: show the next 25' }),
    ).toBeVisible();
    await expect(told(page)).toContainText('Understood: 300 rows');
    await expect(told(page)).not.toContainText('not taken');
    await paste(page, 'readings.0.torque', numbers(2300).join('\n'));
    await expect(told(page)).toContainText('Rows 2001 to 2300 were not taken');
    await told(page).getByRole('button', { name: 'Copy it' }).click();
    await expect(told(page).getByRole('status')).toHaveText('Copied.');
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied.split('\n')).toEqual(numbers(2300).slice(2000));
    await told(page).getByRole('button', { name: 'I have seen it' }).click();
    await expect(told(page)).toHaveCount(0);
  });
});

test('one undo takes a paste back with the rows it added, and brings back what stood there', async ({
  page,
}) => {
  await openWorksheet(page);
  await box(page, 'readings.0.torque').fill('7');
  await paste(page, 'readings.0.torque', numbers(40).join('\n'));
  await expect(box(page, 'readings.39.torque')).toHaveValue('40');
  await expect(told(page)).toContainText('This replaced what stood in row 1: undo brings it back.');
  await page.keyboard.press('Control+z');
  await expect(box(page, 'readings.0.torque')).toHaveValue('7');
  await expect(box(page, 'readings.39.torque')).toHaveCount(0);
  await expect(box(page, 'readings.9.torque')).toHaveValue('');
});

test('past the last row the numbers of a gauge do not join', async ({ page }) => {
  await openWorksheet(page);
  await paste(page, 'readings.0.torque', numbers(1998).join('\n'));
  await box(page, 'readings.1998.torque').focus();
  for (const reading of ['7', '8', '9', '10']) {
    await page.keyboard.type(reading);
    await page.keyboard.press('Enter');
  }
  await expect(box(page, 'readings.1998.torque')).toHaveValue('7');
  await expect(box(page, 'readings.1999.torque')).toHaveValue('8');
  await expect(told(page)).toContainText('The list is full: it holds 2000 readings.');
  await page.keyboard.press('Backspace');
  await page.keyboard.type('11');
  await expect(box(page, 'readings.1999.torque')).toHaveValue('11');
  await expect(told(page)).toHaveCount(0);
});

test('a way’s own readings are a table too, and end without joining', async ({ page }) => {
  await openWorksheet(page);
  await paste(page, 'ways.0.readings.0.dial', `${numbers(13).join('\r\n')}\r\n`);
  await expect(box(page, 'ways.0.readings.11.dial')).toHaveValue('12');
  await expect(told(page)).toContainText('Row 13 was not taken');
  await box(page, 'ways.0.readings.11.dial').focus();
  await page.keyboard.press('Enter');
  await page.keyboard.type('5');
  await expect(box(page, 'ways.0.readings.11.dial')).toHaveValue('12');
});

const NOT_FOR_ONE_BOX = [
  ['1\n110', 'Several lines or cells were pasted'],
  ['1\t110', 'Several lines or cells were pasted'],
  ['9'.repeat(101), 'This box holds 100 letters'],
] as const;

test('a single box refuses what it cannot hold, and shows it', async ({ page }) => {
  await openWorksheet(page);
  await box(page, 'target.stress').fill('120');
  for (const [pasted, says] of NOT_FOR_ONE_BOX)
    await test.step(JSON.stringify(pasted.slice(0, 9)), async () => {
      await paste(page, 'target.stress', pasted);
      await expect(box(page, 'target.stress')).toHaveValue('120');
      await expect(told(page)).toContainText(says);
      await expect(told(page).locator('pre')).toHaveText(pasted);
    });
});

test('a single line with its line break is taken', async ({ page }) => {
  await openWorksheet(page);
  await paste(page, 'target.stress', '110\r\n');
  await expect(box(page, 'target.stress')).toHaveValue('110');
  await expect(told(page)).toHaveCount(0);
});

test('a box that is full to its last letter says so', async ({ page }) => {
  await openWorksheet(page);
  await box(page, 'label').fill('M'.repeat(80));
  await box(page, 'label').press('End');
  await page.keyboard.type('x');
  await expect(box(page, 'label')).toHaveValue('M'.repeat(80));
  await expect(told(page)).toContainText('This box holds 80 letters');
  await page.keyboard.press('Backspace');
  await page.keyboard.type('x');
  await expect(told(page)).toHaveCount(0);
});

/** Opens a page with its scripts held back until `release` is called. */
async function heldBack(page: Page, address: string) {
  let release = () => {};
  const released = new Promise<void>((resolve) => {
    release = resolve;
  });
  await page.route(/\/assets\/(?!(parts-)?before-paint).*\.js$/, async (route) => {
    await released;
    await route.continue();
  });
  await page.goto(address, { waitUntil: 'commit' });
  return release;
}

test('what is typed before the script is there stays and is kept', async ({ page }) => {
  const release = await heldBack(page, 'worksheet/');
  await box(page, 'label').fill('Early mill');
  for (const part of ['rig', 'readings']) await page.locator(`#${part} summary`).first().click();
  await page.getByLabel('wood').check();
  await box(page, 'readings.0.torque').pressSequentially('1.5');
  release();
  await waitUntilLive(page);
  await page.keyboard.type('2');
  await expect(box(page, 'readings.0.torque')).toHaveValue('1.52');
  await page.unrouteAll();
  await page.reload();
  await waitUntilLive(page);
  await expect(box(page, 'label')).toHaveValue('Early mill');
  await expect(page.getByLabel('wood')).toBeChecked();
  await expect(box(page, 'readings.0.torque')).toHaveValue('1.52');
});

test('beside a sheet that was kept it is a sheet of its own', async ({ page }) => {
  await openWorksheet(page);
  await box(page, 'label').fill('First mill');
  const release = await heldBack(page, 'worksheet/?again');
  await box(page, 'band.thickness').fill('1.1');
  release();
  await waitUntilLive(page);
  await expect(box(page, 'label')).toHaveValue('');
  await expect(box(page, 'band.thickness')).toHaveValue('1.1');
  await expect(page.locator('.desk-notice')).toContainText('a sheet of its own');
  await page.locator('.desk-picker select').selectOption({ label: 'First mill' });
  await expect(box(page, 'band.thickness')).toHaveValue('');
});

test('in a lesson it moves the figure', async ({ page }) => {
  const release = await heldBack(page, 'lessons/stiff-spring/');
  const slider = page.locator('live-input .slider').first();
  await slider.focus();
  const built = await slider.inputValue();
  await page.keyboard.press('End');
  release();
  await waitUntilLive(page);
  const moved = await slider.inputValue();
  expect(moved).not.toBe(built);
  await expect.poll(() => new URL(page.url()).hash).toMatch(/^#v=1&/);
});

/** The readings as a person takes them: several series, rows struck out, no torque, whole readings, choices not made. */
import { expect, type Page } from '@playwright/test';
import { barriersWithin } from './barriers.ts';
import { test } from './kept-page.ts';
import { waitUntilLive } from './open-live.ts';
import { box, openAllParts, openWorksheet, tabTo, typeInto } from './worksheet-page.ts';

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const count = (page: Page) => page.locator('#readings .part-says');

const SERIES = ['0.470', '0.475', '0.460', '0.450', '0.425', '0.405', '0.375', '0.355'];

async function openParts(page: Page): Promise<void> {
  await openWorksheet(page);
  const open = button(page, 'Open all parts');
  if ((await open.count()) > 0) await open.click();
}

/** One series down the two columns, as a person with a gauge types it; the first row at no torque. */
async function typeSeries(page: Page): Promise<void> {
  for (const [column, cells] of [
    ['torque', SERIES.map((_, row) => `${1.5 * row}`)],
    ['dial', SERIES],
  ] as const) {
    await box(page, `readings.0.${column}`).focus();
    for (const cell of cells) {
      await page.keyboard.type(cell);
      await page.keyboard.press('Enter');
    }
  }
}

test('the unit of a column is asked about once, written below from then on, and undone whole', async ({
  page,
}) => {
  await openParts(page);
  const torque = (row: number) => box(page, `readings.${row}.torque`);
  const asked = page.locator('.unit-asked');
  await torque(0).fill('15 kgf·m');
  await torque(1).focus();
  await page.keyboard.type('20');
  await expect(torque(1)).toHaveValue('20');
  await expect(asked).toHaveCount(0); // its unit may be typed yet
  await page.keyboard.press('Enter');
  await page.keyboard.type('25');
  await page.keyboard.press('Enter');
  await expect(asked).toContainText(/no unit in 2 rows\. Until you say, 20 counts as 20 N·m/);
  await button(page, 'They are kgf·m: write 20 kgf·m').click();
  await expect(asked).toHaveCount(0);
  await torque(3).focus();
  await page.keyboard.type('30');
  await page.keyboard.press('Enter');
  await expect(torque(3)).toHaveValue('30 kgf·m');
  await expect(asked).toHaveCount(0);
  await button(page, 'Undo').click();
  await button(page, 'Undo').click();
  for (const [row, text] of ['15 kgf·m', '20', '25', ''].entries())
    await expect(torque(row)).toHaveValue(text);
  await expect(asked).toHaveCount(1);
});

test('the answer about a unit is kept with the sheet', async ({ page }) => {
  await openParts(page);
  const torque = (row: number) => box(page, `readings.${row}.torque`);
  await torque(0).fill('15 kgf·m');
  await torque(1).fill('20');
  await torque(2).focus();
  await button(page, 'It is 20 kgf·m').click();
  await page.reload();
  await waitUntilLive(page);
  await openAllParts(page);
  await torque(2).focus();
  await page.keyboard.type('30');
  await page.keyboard.press('Enter');
  await expect(torque(2)).toHaveValue('30 kgf·m');
  await expect(page.locator('.unit-asked')).toHaveCount(0);
});

test('another series starts in a row of its own, can be numbered anew, joined and undone', async ({
  page,
}) => {
  await openParts(page);
  await expect(button(page, 'Start another series')).toBeDisabled();
  await typeSeries(page);
  await button(page, 'Start another series').focus();
  await page.keyboard.press('Enter');
  await expect(box(page, 'readings.8.torque')).toBeFocused();
  await button(page, 'Start another series').click();
  await expect(box(page, 'readings.8.torque')).toBeFocused();
  await page.keyboard.type('1.5');
  await expect(page.locator('.row-series')).toHaveCount(1);
  await expect(page.locator('.row-series')).toContainText('its own zero');
  await expect(page.getByLabel('Series', { exact: true })).toHaveValue('2');

  await box(page, 'readings.8.series').fill('');
  await page.keyboard.type('3');
  await page.keyboard.press('Enter');
  await expect(box(page, 'readings.8.torque')).toBeFocused();
  await box(page, 'readings.8.series').fill('?');
  await expect(page.locator('#readings .row-trouble .refusal')).toBeVisible();
  await button(page, 'Join to the rows above').click();
  await expect(page.locator('.row-series')).toHaveCount(0);
  await expect(box(page, 'readings.8.torque')).toBeFocused();
  await button(page, 'Undo').click();
  await expect(box(page, 'readings.8.series')).toHaveValue('?');
});

test('a pasted column of series begins each of them once', async ({ page }) => {
  await openParts(page);
  await box(page, 'readings.0.torque').focus();
  await page.evaluate(() => {
    const clipboardData = new DataTransfer();
    clipboardData.setData(
      'text/plain',
      'torque\tdial\tseries\n2\t0.4\t1\n3\t0.3\t1\n2\t0.4\t2\n3\t0.3\t2',
    );
    const options = { clipboardData, bubbles: true, cancelable: true };
    document.activeElement?.dispatchEvent(new ClipboardEvent('paste', options));
  });
  await expect(page.locator('.row-series input')).toHaveCount(2);
  await expect(box(page, 'readings.2.series')).toHaveValue('2');
  const numbers = await page.locator('.readings th[scope="row"]').allTextContents();
  expect(numbers.slice(0, 5)).toEqual(['1', '2', '1', '2', '3']);
  await expect(page.getByLabel('Dial shows, row 2 of series 2')).toHaveValue('0.3');
});

test('a row is struck out with a reason by keyboard, kept, and taken back', async ({ page }) => {
  await openParts(page);
  await box(page, 'rig.graduation').fill('0.005');
  await typeSeries(page);
  await button(page, 'Strike out row 3').focus();
  await page.keyboard.press('Enter');
  await expect(box(page, 'readings.2.struck')).toBeFocused();
  await expect(box(page, 'readings.2.struck')).toHaveValue('no reason given');
  await expect(page.getByText('One row struck out and not used.')).toBeVisible();
  await page.keyboard.type('the wrench slipped');
  await expect(page.getByText('One row struck out and not used.')).toBeVisible();
  await expect(page.getByLabel('Dial shows, row 3, struck out')).toHaveValue('0.460');
  await expect(box(page, 'readings.2.dial')).toHaveCSS('text-decoration-line', 'line-through');
  await page.keyboard.press('Enter');
  await expect(box(page, 'readings.3.torque')).toBeFocused();
  await page.reload();
  await waitUntilLive(page);
  await expect(box(page, 'readings.2.struck')).toHaveValue('the wrench slipped');
  await box(page, 'readings.2.struck').fill('');
  await expect(box(page, 'readings.2.struck')).toBeFocused();
  await page.keyboard.type('misread');
  await button(page, 'Use row 3 again').click();
  await expect(box(page, 'readings.2.struck')).toHaveCount(0);
  await expect(page.getByLabel('Dial shows, row 3', { exact: true })).toHaveValue('0.460');
  await button(page, 'Undo').click();
  await expect(box(page, 'readings.2.struck')).toHaveValue('misread');
});

test('a reading at no torque is taken, and it says why the line leaves it out', async ({
  page,
}) => {
  await openParts(page);
  await typeSeries(page);
  await expect(box(page, 'readings.0.torque')).toHaveValue('0');
  await expect(box(page, 'readings.0.torque')).not.toHaveAttribute('aria-invalid');
  const note = page.locator('.readings').first().locator('.row-trouble .hint');
  await expect(note).toHaveText(['Not used for the line: with no torque the band hangs slack.']);
  await expect(count(page)).toContainText('8 rows');
});

test('only the columns that are wanted stand there, and none that holds something goes', async ({
  page,
}) => {
  await openParts(page);
  await expect(box(page, 'readings.0.wholeTurns')).toBeVisible();
  await expect(box(page, 'readings.0.turns')).toHaveCount(0);
  await page.getByLabel('turns and hand together').check();
  await expect(box(page, 'readings.0.wholeTurns')).toHaveCount(0);
  await expect(box(page, 'rig.travelPerTurn')).toHaveCount(0);
  await page.getByLabel('I also noted turns of the screw').check();
  await box(page, 'readings.0.turns').fill('1/12');
  await expect(page.getByLabel('I also noted turns of the screw')).toBeDisabled();
  await page.getByLabel('where the hand points').check();
  await box(page, 'readings.0.wholeTurns').fill('1');
  await page.getByLabel('turns and hand together').check();
  await expect(box(page, 'readings.0.wholeTurns')).toHaveValue('1');
});

test('what nobody has said shows no button chosen, and is taken back', async ({ page }) => {
  await openParts(page);
  const group = page.getByRole('group', { name: 'How do you write a reading down?' });
  const takeBack = button(page, 'Not said: How do you write a reading down?');
  await expect(group.getByRole('radio', { checked: true })).toHaveCount(0);
  await expect(group.getByRole('radio')).toHaveCount(2);
  await typeInto(page, 'rig.readTo', '0.005');
  await tabTo(page, 'choice-rig.dialWritten');
  await page.keyboard.press('Space');
  await expect(group.getByLabel('where the hand points')).toBeChecked();
  await takeBack.focus();
  await page.keyboard.press('Enter');
  await expect(group.getByRole('radio', { checked: true })).toHaveCount(0);
  await expect(group.getByRole('radio').first()).toBeFocused();
  await expect(takeBack).toHaveCount(0);
  await button(page, 'Undo').click();
  await expect(group.getByLabel('where the hand points')).toBeChecked();
});

test('a phone has room for struck rows and two series, and axe finds nothing', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openParts(page);
  await page.getByLabel('turns and hand together').check();
  await typeSeries(page);
  await button(page, 'Strike out row 3').click();
  await page.keyboard.type('the wrench slipped');
  await button(page, 'Start another series').click();
  await page.keyboard.type('2');
  const table = page.locator('.readings').first();
  const sizes = await table
    .locator('input, button')
    .evaluateAll((all) =>
      all
        .map((each) => each.getBoundingClientRect())
        .map(({ width, height }) => ({ width, height })),
    );
  expect(Math.min(...sizes.map(({ height }) => height))).toBeGreaterThanOrEqual(44);
  const numbers = await table
    .locator('[data-path$=".dial"]')
    .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().width));
  expect(Math.min(...numbers)).toBeGreaterThanOrEqual(120);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await page.setViewportSize({ width: 390, height: 1600 }); // no strip over half a button
  await table.evaluate((each) => each.scrollIntoView());
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await barriersWithin(page, '#readings .part-boxes'), colorScheme).toEqual([]);
  }
});

/** Second opinions, and ways of setting beside each other, on the page. */
import { expect, type Page } from '@playwright/test';
import { barriersWithin } from './barriers.ts';
import { test } from './kept-page.ts';
import { openExample, resultText } from './worksheet-page.ts';

const box = (page: Page, path: string) => page.locator(`[data-path="${path}"]`);

/** Opens the boxes of the second opinions by keyboard. */
async function openSecond(page: Page): Promise<void> {
  await openExample(page);
  await page.getByText('A second opinion').press('Enter');
  await box(page, 'second.torque').fill('13.7');
}

test('a note is a stress beside the dial and the screw, and its octave is found out', async ({
  page,
}) => {
  await openSecond(page);
  await box(page, 'second.span').fill('1350');
  await box(page, 'second.note').fill('41.75');
  expect(await resultText(page, 'opinion-note')).toContain('MPa at 13.7 N·m');
  await expect(page.getByText('It agrees with what you measured.')).toBeVisible();
  await expect(page.getByText('Its note says')).toBeVisible();
  await box(page, 'second.note').fill('83.5');
  await expect(page.getByText('You may have heard another harmonic: try 2')).toBeVisible();
  await box(page, 'second.harmonic').fill('2');
  await expect(page.getByText('It agrees with what you measured.')).toBeVisible();
});

test('a push and two torques judge as well, what cannot be is told, and all is kept', async ({
  page,
}) => {
  await openSecond(page);
  await box(page, 'second.span').fill('1350');
  await box(page, 'second.force').fill('48.9');
  await box(page, 'second.deflection').fill('5');
  await box(page, 'second.tightening').fill('13.7');
  await box(page, 'second.loosening').fill('15');
  await expect(page.getByText('takes less than tightening')).toBeVisible();
  await box(page, 'second.loosening').fill('5.4');
  await expect(page.getByText('It agrees with what you measured.')).toHaveCount(2);
  await box(page, 'second.deflection').fill('60');
  await expect(page.getByText('Even a slack band takes')).toBeVisible();
  await expect(page.getByText(/^Saved/)).toBeVisible();
  await page.reload();
  await expect(box(page, 'second.loosening')).toHaveValue('5.4');
  await expect(box(page, 'second.deflection')).toHaveValue('60');
});

test('ways of setting stand on one scale with the target, and axe finds nothing', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openSecond(page);
  await box(page, 'second.span').fill('1350');
  await box(page, 'second.note').fill('41.75');
  for (const [place, name, torque] of [
    [0, 'Red mark', '11'],
    [1, 'Nine flats', '14'],
  ] as const) {
    await box(page, `ways.${place}.name`).fill(name);
    await box(page, `ways.${place}.torque`).fill(torque);
  }
  const bars = page.locator('[data-bars="ways"]');
  await expect(bars.locator('.bar-row')).toContainText(['Red mark', 'Nine flats']);
  await expect(bars.getByText('Dashed: the target')).toBeVisible();
  await bars.evaluate((each) => each.scrollIntoView({ block: 'center' }));
  expect(await barriersWithin(page, '#compare, #ways')).toEqual([]);
});

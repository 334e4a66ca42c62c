/** The steps at the bench: nothing jumps, start and let-off have rows of their own, the slack handle and the pluck. */
import { expect, type Page } from '@playwright/test';
import { benchMillAt } from '../../src/core/bench.ts';
import { test } from './kept-page.ts';
import { openLive } from './open-live.ts';

const openBench = (page: Page, fragment = '#v=1&seed=7&level=clean') =>
  openLive(page, `bench/${fragment}`);

test('keeps drawing and steps in their place, whatever is told', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openBench(page);
  const places = () =>
    page.evaluate(() => {
      const top = (part: string) =>
        document.querySelector(part)?.getBoundingClientRect().top ?? Number.NaN;
      return top('.bench-steps') - top('.bench-work');
    });
  const before = await places();
  await page.getByRole('button', { name: /^Clamp for/ }).click();
  for (const torque of ['', '3', '4', '0.5', '12', '500']) {
    await page.locator('#bench-wrench').fill(torque);
    await page.getByRole('button', { name: 'Turn until it clicks' }).click();
    expect(await places()).toEqual(before);
  }
  await page.getByRole('button', { name: 'Let the band off' }).click();
  expect(await places()).toEqual(before);
});

test('has a row for the start and one after letting off, marked and not of the line', async ({
  page,
}) => {
  await openBench(page);
  await page.getByRole('button', { name: /^Clamp for/ }).click();
  const write = async (dial: string) => {
    await page.locator('#bench-reading').fill(dial);
    await page.locator('#bench-reading').press('Enter');
  };
  await write('6.02');
  await page.getByRole('button', { name: 'Let the band off' }).click();
  await write('6.01');
  await write('6.01');
  await expect(page.locator('#bench-finding')).toContainText('written already');
  await expect(page.locator('.bench-rows tbody td:nth-child(2)')).toHaveText([
    'start, slack',
    'let off',
  ]);
  await expect(page.locator('.bench-table')).toContainText('not used for the line');
});

test('tries the slack handle and plucks the tight band', async ({ page }) => {
  await openBench(page, '#v=1&seed=7&level=drag');
  const drag = benchMillAt(7, 'drag').hidden.dragTorque;
  for (const share of [0.8, 1.2]) {
    await page.locator('#bench-slack').fill((share * drag).toFixed(2));
    await page.getByRole('button', { name: 'Try the handle on the slack band' }).click();
  }
  await expect(page.locator('.bench-heard li')).toHaveText([
    /the handle stays/,
    /the handle turns/,
  ]);
  await page.getByRole('button', { name: /^Clamp for/ }).click();
  await page.locator('#bench-wrench').fill('15');
  await page.locator('#bench-wrench').press('Enter');
  await page.locator('.bench-more summary').click();
  await page.getByRole('button', { name: 'Pluck it' }).click();
  await expect(page.locator('.bench-heard').last()).toContainText(/15\.0\sN·m: \d\d\.\d\sHz/);
});

/** A measurement planned on the sheet: what it would reach, what would help, and the paper to take along. */
import { expect } from '@playwright/test';
import { barriersWithin } from './barriers.ts';
import { test } from './kept-page.ts';
import { openLive } from './open-live.ts';
import { openEmptyPlan, openPlan, printedTexts, printPlan } from './plan-page.ts';

test('says what the plan would reach, and what would help most, best first', async ({ page }) => {
  await openPlan(page);
  await page.locator('#box-plan-steps').fill('8');
  await expect(page.locator('.plan-says')).toContainText(/know the stress to ±\d+ % or better/, {
    timeout: 40_000,
  });
  await expect(page.locator('.plan').getByText('Trying')).toHaveCount(0, { timeout: 40_000 });
  const offers = await page.locator('.plan .offers li').allTextContents();
  expect(offers.length).toBeGreaterThan(1);
  const widths = offers.map((offer) => Number(/±(\d+)/.exec(offer)?.[1]));
  expect(widths).toEqual([...widths].sort((a, b) => a - b));
  expect(await barriersWithin(page, '.plan')).toEqual([]);
});

test('is one step from the top of the sheet, and from a link to it', async ({ page }) => {
  for (const go of [
    async () => {
      await openLive(page, 'worksheet/');
      await page.getByRole('link', { name: 'Plan your measurement first' }).first().click();
    },
    () => openLive(page, 'worksheet/#plan'),
  ]) {
    await page.goto('about:blank');
    await go();
    await expect(page.locator('.plan')).toBeVisible();
    await expect(page.locator('#plan > summary')).toBeInViewport();
    await expect(page.getByText('damaged')).toHaveCount(0);
    await page.evaluate(() => localStorage.clear());
  }
});

test('beyond a maker’s limit says STOP, on the page and on the paper to take along', async ({
  page,
}) => {
  await openPlan(page);
  await page.locator('#box-plan-topTorque').fill('20');
  await expect(page.locator('.plan .guard.is-stop')).toHaveCount(0);
  await page.locator('#box-target-makerLimitStress').fill('100');
  const stop = page.locator('.plan .guard.is-stop');
  await expect(stop).toHaveText(
    /^STOP\. At 20\sN·m the stress would be above what the band’s maker allows, 100\sMPa\. Go no higher than \d+(\.\d)?\sN·m/,
    { timeout: 40_000 },
  );
  await printPlan(page);
  await page.emulateMedia({ media: 'print' });
  const printed = page.locator('.along-page .along-limit');
  await expect(printed).toHaveText((await stop.textContent()) ?? 'nothing');
  await expect(printed).toBeVisible();
});

test('says the stress at the top, and warns of one above common practice, on the page and on the paper', async ({
  page,
}) => {
  await openPlan(page);
  const warning = page
    .locator('.plan .guard.is-warn')
    .filter({ hasText: 'small mills usually use' });
  await page.locator('#box-plan-topTorque').fill('13');
  await expect(page.locator('.plan-top')).toHaveText(
    /^At 13\sN·m the band should carry \d+\s±\s\d+\sMPa, by your readings\.$/,
    { timeout: 40_000 },
  );
  await expect(warning).toHaveCount(0);
  await page.locator('#box-plan-topTorque').fill('24');
  await expect(warning).toHaveText(
    /^At 24\sN·m the stress may reach \d+\sMPa, uncertainty included\..* Plan a top of \d+(\.\d)?\sN·m or less/,
    { timeout: 40_000 },
  );
  const [top, said] = await Promise.all([
    page.locator('.plan-top').textContent(),
    warning.textContent(),
  ]);
  await printPlan(page);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.along-page .along-top')).toHaveText(top ?? 'nothing');
  await expect(page.locator('.along-page .along-limit')).toHaveText(said ?? 'nothing');
  await expect(page.locator('.along-page .along-limit')).toBeVisible();
});

test('prints the settings that the page names, and what the sheet knows of the mill', async ({
  page,
}) => {
  await openPlan(page);
  await page.locator('#box-measuredOn').fill('30 Nov 2026');
  await page.locator('#box-plan-topTorque').fill('14');
  await expect(page.locator('.plan-top')).toContainText('At 14', { timeout: 40_000 });
  const tried = (await page.locator('.plan-reach .hint').first().textContent()) ?? '';
  await printPlan(page);
  const settings = await printedTexts(page, 'tbody th');
  expect(settings).toHaveLength(10);
  expect(tried).toContain(`The 10 steps are ${settings.join(', ')}`);
  for (const setting of settings) expect((2 * Number(setting)) % 1).toBe(0);
  const label = await page.locator('#box-label').inputValue();
  expect((await printedTexts(page, '.along-head')).join()).toContain(label);
  expect((await printedTexts(page, '.along-head')).join()).toMatch(/Measured on$/); // a day to come
  expect((await printedTexts(page, '.along-cautions')).join()).toMatch(
    /Set the clamps \d+\smm apart.*write down the torque you reached and go on/,
  );
  const facts = (await printedTexts(page, '.along-facts > div')).join('\n');
  for (const path of ['mill-wheelDiameter1', 'target-stress', 'bands-0-bodyWidth'])
    expect(facts).toContain(await page.locator(`#box-${path}`).inputValue());
  expect(facts).toMatch(/Band maker’s limit$/m); // a line for the pen
});

test('counts in inch-pounds where the wrench has them, on the page and on the paper', async ({
  page,
}) => {
  await openEmptyPlan(page);
  await page.locator('#units-us').check({ force: true });
  await page.locator('#box-use-torque').fill('177 in-lb');
  await expect(page.locator('.plan-default')).toContainText(/up to 180\sin·lbf/);
  await expect(page.locator('.plan-reach .hint').first()).toContainText(/, 180\sin·lbf\./);
  await page.locator('#box-plan-topTorque').fill('20');
  await page.getByRole('button', { name: 'Write 20 in·lbf' }).click();
  await expect(page.locator('.plan-reach .hint').first()).toContainText(/, 20\sin·lbf\./);
  await page.locator('#box-plan-topTorque').fill('15');
  await expect(page.locator('.plan-reach .hint').first()).toContainText(/, 180\sin·lbf\./);
  await printPlan(page);
  expect((await printedTexts(page, '.along-series thead')).join()).toContain('Set to, in·lbf');
  const settings = await printedTexts(page, 'tbody th');
  expect(settings.at(-1)).toBe('180');
  for (const setting of settings) expect(Number(setting) % 5).toBe(0);
});

test('asks what tightens the band, and speaks of a cylinder where that is it', async ({ page }) => {
  await openEmptyPlan(page);
  const plan = page.locator('.plan');
  await expect(plan.getByLabel('Top torque')).toBeVisible();
  await plan.getByRole('radio', { name: 'a hydraulic cylinder' }).check();
  await expect(plan.getByLabel('Top pressure')).toBeVisible();
  await expect(page.locator('#start').getByLabel('Piston diameter')).toBeAttached();
  await printPlan(page);
  const cautions = (await printedTexts(page, '.along-cautions')).join();
  expect(cautions).toContain('Pump slowly');
  expect(cautions).not.toMatch(/turn (?!each)|handle|torque/i);
});

test('without a top leaves the settings to the pen, and says how to find them', async ({
  page,
}) => {
  await openEmptyPlan(page);
  await page.locator('#box-plan-steps').fill('8');
  await printPlan(page);
  await expect(page.locator('.along-series tbody tr')).toHaveCount(8);
  expect((await printedTexts(page, 'tbody')).join('')).toBe('');
  await expect(page.locator('.along-finding')).toHaveText(
    /^First choose a top torque .* go up in 8 even steps\./,
  );
});

test('prints no plan before its warnings are known, and none that cannot be', async ({ page }) => {
  await openPlan(page);
  const print = page.getByRole('button', { name: 'Print a sheet to take' });
  await expect(print).toBeEnabled({ timeout: 40_000 });
  await page.locator('#box-plan-topTorque').fill('20');
  await expect(print).toBeDisabled();
  await expect(print).toBeEnabled({ timeout: 40_000 });
  await page.locator('#box-plan-steps').fill('4');
  await expect(page.locator('.plan').getByText('Plan 6 to 30 steps')).toBeVisible();
  await expect(print).toBeDisabled();
});

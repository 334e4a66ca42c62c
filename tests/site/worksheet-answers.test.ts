/** The answers at the top of the sheet: which torque they are about, one interval for one thing, nothing told twice. */
import { expect, type Locator, type Page } from '@playwright/test';
import { test } from './kept-page.ts';
import { box, failAtFaults, resultText, trouble, withExample } from './worksheet-page.ts';

test.beforeEach(({ page }) => failAtFaults(page));

const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');
const bars = async (page: Page) =>
  (await page.locator('.stress-answer .bar-row .steel').allTextContents()).map(plain);
const answer = async (page: Page) =>
  plain((await page.locator('[data-answer="stress"] .answer-beside').textContent()) ?? '');

/** How large the letters of an element are, px. */
const letters = (of: Locator): Promise<number> =>
  of.evaluate((element) => Number.parseFloat(getComputedStyle(element).fontSize));

test('are at the torque in use, with one interval for it in the bars, the answer and the results', async ({
  page,
}) => {
  await withExample(page);
  await expect(page.locator('.bar-at')).toContainText('your highest reading');
  const atTop = await bars(page);
  await box(page, 'use.torque').fill('10');
  await expect(page.locator('.bar-at')).toContainText(/At 10\.0\sN·m, the torque you use now/);
  await expect(page.locator('.stress-answer .bar-target')).toBeVisible();
  const atUse = await bars(page);
  expect(atUse).toHaveLength(atTop.length);
  for (const [at, bar] of atUse.entries()) expect(bar).not.toBe(atTop[at]);
  expect(await answer(page)).toContain(atUse.at(-1));
  const routes = ['Predicted', 'Measured', 'Both together'];
  for (const [at, route] of ['predicted', 'measured', 'both'].entries())
    expect(await resultText(page, `${route}-at-use`)).toBe(
      `${routes[at]} at 10.0 N·m, the torque you use now${atUse[at]}`,
    );
  for (const name of ['predicted', 'both', 'stress'])
    expect(await resultText(page, name)).toContain('at 14.5 N·m, your highest reading');
  expect(plain((await page.locator('.reach .steel').textContent()) ?? '')).toBe(atUse.at(-1));
});

test('tell a disagreement once in its part', async ({ page }) => {
  await withExample(page);
  await expect(page.locator('[data-result="both"]')).toHaveCount(1);
  await box(page, 'tensioner.friction.low').fill('0.02');
  await box(page, 'tensioner.friction.high').fill('0.03');
  await expect.poll(() => resultText(page, 'agreement')).toContain('They do not agree');
  await expect(page.locator('[data-result="both"]')).toHaveCount(0);
});

test('hold back the check during the day while the setting is held back', async ({ page }) => {
  await withExample(page);
  await expect.poll(() => resultText(page, 'day')).toContain('cold');
  expect(await resultText(page, 'day')).not.toContain('Not yet');
  await box(page, 'tensioner.friction.low').fill('0.02');
  await box(page, 'tensioner.friction.high').fill('0.03');
  await expect.poll(() => resultText(page, 'day')).toContain('Not yet.');
});

test('ask about a body as wide as the band over its teeth, and refuse nothing', async ({
  page,
}) => {
  await withExample(page);
  await box(page, 'band.widthOverTeeth').fill('29');
  await expect(trouble(page, 'band.bodyWidth')).toContainText('back to the bottom of the gullets');
  await expect(box(page, 'band.bodyWidth')).not.toHaveAttribute('aria-invalid', 'true');
  expect(await resultText(page, 'predicted')).toContain('MPa');
  await box(page, 'band.widthOverTeeth').fill('35');
  await expect(trouble(page, 'band.bodyWidth')).toHaveCount(0);
});

test('are as wide as the wrench is poor', async ({ page }) => {
  await withExample(page);
  const own = (await bars(page))[0];
  const line = page.locator('th', { hasText: 'Torque wrench' });
  await expect(line).toHaveText('Torque wrench, 4 %');
  await page.locator('#tensioner details.seldom > summary').click();
  await box(page, 'tensioner.wrenchClass').fill('20');
  await expect.poll(async () => (await bars(page))[0]).not.toBe(own);
  await expect(line).toHaveText('Torque wrench, 20 %');
});

test('tell a provisional torque, its range and why, no larger than the words, for the other bands too', async ({
  page,
}) => {
  await withExample(page);
  await box(page, 'bands.0.thickness').fill('1.4');
  const range = String.raw`^([\d.]+)\sN·m, [\d.]+\sto\s[\d.]+\sN·m`;
  const top = String.raw`: provisional \(your readings end at 14\.5\sN·m\)\.`;
  for (const [about, which] of [
    ['setting', ''],
    ['bands', 'this band '],
  ]) {
    const told = page.locator(`[data-answer="${about}"] dd`);
    await expect(told).toContainText(
      new RegExp(String.raw`${range}${top} Measure ${which}up to \1\sN·m first\.$`),
    );
    expect(await letters(told.locator('.hand'))).toBe(await letters(told.locator('> span')));
  }
});

test('show the torque by the screw alone no larger than a provisional one by the readings', async ({
  page,
}) => {
  await withExample(page);
  const torque = (name: string) => page.locator(`[data-result="${name}"] .result-number`);
  await expect(page.locator('[data-result="theory-setting"]')).toContainText('Only a check.');
  const own = await letters(torque('setting'));
  expect(await letters(torque('theory-setting'))).toBe(own);
  await box(page, 'target.stress').fill('100');
  await expect(page.locator('[data-result="theory-setting"]')).not.toContainText('Only a check.');
  expect(await letters(torque('theory-setting'))).toBeGreaterThan(own);
});

test('call the open boxes of a new band another band, and closed what opens them', async ({
  page,
}) => {
  await withExample(page);
  const fold = page.locator('.bands details').last();
  await expect(fold.locator('summary')).toHaveText('Add a band', { useInnerText: true });
  await fold.locator('summary').click();
  await expect(fold.locator('summary')).toHaveText('Another band', { useInnerText: true });
});

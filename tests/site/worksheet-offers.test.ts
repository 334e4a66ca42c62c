/** What a refusal offers, who hears it, and where the focus goes. */
import { expect } from '@playwright/test';
import { test } from './kept-page.ts';
import { box, failAtFaults, trouble, withExample } from './worksheet-page.ts';

test.beforeEach(({ page }) => failAtFaults(page));

/** What is more, or less, than one number, and what is offered instead. */
const MEANT = [
  ['rig.gaugeLength', 'about 400', 'Type just 400.'],
  ['readings.2.torque', '4 or 5', 'Type one number, such as 4.5, halfway between.'],
  ['tensioner.dragTorque', '0.7–0.9', 'Type 0.8 here and 0.1 under “give or take”.'],
  ['tensioner.friction.low', '0.1 to 0.2', 'Type 0.1 in the first box and 0.2 in the second.'],
] as const;

test('a refusal says what to type, and is said by voice when its box is left', async ({ page }) => {
  await withExample(page);
  for (const [path, typed, says] of MEANT) {
    await box(page, path).fill(typed);
    await expect(trouble(page, path)).toContainText(says);
    await page.keyboard.press('Tab');
    await expect(page.locator('[role="status"].visually-hidden')).toContainText(says);
  }
  await box(page, 'rig.gaugeLength').fill('15 N');
  await expect(trouble(page, 'rig.gaugeLength')).toContainText('this box takes a length');
  await expect(trouble(page, 'rig.gaugeLength')).not.toContainText('Type');
});

test('what is offered is written with one press, in both boxes, and undone in one step', async ({
  page,
}) => {
  await withExample(page);
  const drag = box(page, 'tensioner.dragTorque');
  const [was, around] = [await drag.inputValue(), box(page, 'tensioner.dragTorqueUncertainty')];
  const doubt = await around.inputValue();
  await drag.fill('12 to 14 in-lb');
  await page.getByRole('button', { name: 'Write 13 in-lb and 1 in-lb' }).click();
  await expect(drag).toHaveValue('13 in-lb');
  await expect(around).toHaveValue('1 in-lb');
  await expect(trouble(page, 'tensioner.dragTorque')).toHaveCount(0);
  await page.keyboard.press('Control+z');
  await expect(drag).toHaveValue('12 to 14 in-lb');
  await expect(around).toHaveValue(doubt);
  await page.keyboard.press('Control+z');
  await expect(drag).toHaveValue(was);
});

test('a refusal that was said by voice is silent once something else is typed', async ({
  page,
}) => {
  await withExample(page);
  const spoken = page.locator('[role="status"].visually-hidden');
  await box(page, 'rig.gaugeLength').fill('about 400');
  await page.keyboard.press('Tab');
  await expect(spoken).toContainText('400');
  await box(page, 'rig.gaugeLength').fill('400');
  await expect(spoken).toBeEmpty();
});

test('the focus stays near a button that goes when it is pressed by key', async ({ page }) => {
  await withExample(page);
  await page.getByRole('button', { name: /^Remove / }).focus();
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: /^Remove / })).toHaveCount(0);
  await expect(page.locator('.paper :focus')).toHaveCount(1);
});

test('a dial that is read to half its mark gets that length with one press, refused or doubted', async ({
  page,
}) => {
  await withExample(page);
  const readTo = box(page, 'rig.readTo');
  for (const typed of ['half', '1/2']) {
    await readTo.fill(typed);
    await expect(trouble(page, 'rig.readTo')).toContainText(
      'Type 0.005: half of your graduation, 0.01.',
    );
    await page.getByRole('button', { name: 'Write 0.005' }).click();
    await expect(readTo).toHaveValue('0.005');
    await expect(trouble(page, 'rig.readTo')).toHaveCount(0);
  }
});

test('a thread that no list has is taken by its sizes, which are told in its own units', async ({
  page,
}) => {
  await withExample(page);
  const thread = box(page, 'tensioner.thread.designation');
  const field = page.locator('.field', { has: thread });
  await thread.fill('Tr 24x4, greased');
  await expect(field).toContainText(/Taken as 24\smm across with a pitch of 4\smm/);
  await thread.fill('3/4-5 acme, single');
  await expect(field).toContainText(/Taken as 0\.75\sin across with a pitch of 0\.2\sin/);
  await expect(trouble(page, 'tensioner.thread.designation')).toHaveCount(0);
  await thread.fill('3/4-6 acme, single');
  await expect(field).not.toContainText('Taken as');
});

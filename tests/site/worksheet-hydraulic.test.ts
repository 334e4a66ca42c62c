/** A mill with a hydraulic tensioner, and a rig that pulls a single strip: from an empty sheet to the card, on a phone. */
import { expect, type Page } from '@playwright/test';
import { test } from './kept-page.ts';
import { openLive, waitUntilLive } from './open-live.ts';
import { openAllParts, resultText } from './worksheet-page.ts';

test.use({ viewport: { width: 390, height: 844 } });

const box = (page: Page, path: string) => page.locator(`[data-path="${path}"]`);

/** Fills boxes by their paths, in their order. */
async function fillIn(page: Page, boxes: Readonly<Record<string, string>>): Promise<void> {
  for (const [path, text] of Object.entries(boxes)) await box(page, path).fill(text);
}

/** Pastes a table from the first pressure on, as a person copies it out of the notes. */
async function paste(page: Page, path: string, text: string): Promise<void> {
  await box(page, path).evaluate((target, pasted) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', pasted);
    target.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }),
    );
  }, text);
}

// Read off a gauge in bar, one row in psi; the dial runs backwards and passes nought after the fifth row.
const NOTES = `5	0.118	0
16 bar	0.118	0
391.6 psi	0.086	0
38	0.048	0
49	0.010	0
60	0.172	1
70	0.140	1
81	0.104	1
92	0.060	1
103	0.024	1`;

test('a hydraulic mill is filled in from nothing to its card', async ({ page }) => {
  await openLive(page, 'worksheet/');
  await page.getByText('a hydraulic cylinder').click();
  await expect(box(page, 'use.torque')).toHaveCount(0);
  await fillIn(page, {
    'tensioner.cylinder.pistonDiameter': '40',
    'use.pressure': '90',
    'band.bodyWidth': '42',
    'band.thickness': '1.25',
  });
  await expect(page.locator('.bar-at')).toContainText('At 90.0');
  await expect(page.getByText('The cylinder predicts')).toBeVisible();
  await page.getByText('What the prediction assumes').click();
  await expect(page.getByText(/^friction of the seal/)).toBeVisible();
  await openAllParts(page);
  await fillIn(page, {
    'tensioner.cylinder.gaugeTop': '160',
    'tensioner.cylinder.gaugeClass': '1.6',
    'tensioner.cylinder.noLoadPressure': '2.8',
    'rig.gaugeLength': '600',
    'rig.graduation': '0.002',
    'rig.travelPerTurn': '0.2',
    'target.stress': '110',
  });
  await page.getByLabel('falls', { exact: true }).check();
  await expect(page.getByLabel('Torque, row 1')).toHaveCount(0);
  await paste(page, 'readings.0.pressure', NOTES);
  await expect(box(page, 'readings.9.pressure')).toHaveValue('103');
  expect(await resultText(page, 'stress')).toContain('at 103 bar');
  expect(await resultText(page, 'setting')).toMatch(
    /^Pressure for the target, by your readings\d+\.\d bar/,
  );
  expect(await resultText(page, 'efficiency')).toContain('Share of the pressure that arrives');
  await expect(page.locator('[data-answer="agreement"]')).toContainText('They agree');
  await expect(page.locator('.stress-chart')).toContainText('pressure on the gauge, bar');
  await box(page, 'tensioner.cylinder.rodDiameter').fill('45');
  await expect(page.getByText('is not thinner than the piston').first()).toBeVisible();
  await box(page, 'tensioner.cylinder.rodDiameter').fill('');
  await page.getByText('Look at the card as it prints').click();
  const card = page.locator('.card');
  await expect(card).toContainText('Set to');
  await expect(card).toContainText('Piston');
  await expect(card).not.toContainText(/torque|thread|wrench|screw/i);
  await expect(page.getByText(/^Saved/)).toBeVisible();
  await page.reload();
  await waitUntilLive(page);
  await expect(box(page, 'readings.2.pressure')).toHaveValue('391.6 psi');
  await page.getByRole('radio', { name: 'a screw', exact: true }).check({ force: true });
  await expect(box(page, 'use.torque')).toHaveValue('');
  await page.getByText('a hydraulic cylinder').click();
  await expect(box(page, 'use.pressure')).toHaveValue('90');
});

test('a hydraulic mill that stretches too little is told what to check before it is set', async ({
  page,
}) => {
  await openLive(page, 'worksheet/');
  await page.getByText('a hydraulic cylinder').click();
  await openAllParts(page);
  await fillIn(page, {
    'tensioner.cylinder.pistonDiameter': '40',
    'band.bodyWidth': '42',
    'band.thickness': '1.25',
    'rig.gaugeLength': '600',
    'rig.graduation': '0.002',
    'target.stress': '110',
  });
  await page.getByLabel('falls', { exact: true }).check();
  const half = [500, 500, 484, 465, 446, 427, 411, 393, 371, 353];
  const rows = half.map((dial, row) => `${5 + 11 * row}\t${dial / 1000}`);
  await paste(page, 'readings.0.pressure', rows.join('\n'));
  await expect(page.locator('[data-answer="agreement"]')).toContainText('you measured less');
  await expect(page.locator('[data-answer="setting"]')).toContainText('Not yet.');
  const first = page.locator('[data-result="find-out-first"]');
  await expect(first).toContainText(/^Find out first why .* nothing above 104\sbar/);
  await expect(page.getByText('Use the pressure from your readings')).toHaveCount(0);
  expect(await resultText(page, 'tooLittleArrives')).toMatch(
    /^Only \d\d % of the pressure arrives/,
  );
  const checks = page.locator('[data-result="causes"]');
  await expect(checks.locator('li').first()).toContainText('Look where the hose goes in');
  await expect(checks).not.toContainText(/torque|wrench|thread|screw/);
  await page.getByRole('button', { name: 'Close all parts' }).press('Enter');
  await page.locator('#setting summary').first().press('Enter');
  await first.getByRole('link', { name: 'see the checks in part 6' }).press('Enter');
  await expect(checks).toBeVisible();
  await page.getByText('Look at the card as it prints').click();
  const card = page.locator('.card');
  await expect(card.locator('.card-first')).toContainText(/^Find out first/);
  expect((await card.textContent())?.match(/agree/g)).toHaveLength(1);
});

test('a single strip has no wheels, and all of the pull', async ({ page }) => {
  await openLive(page, 'worksheet/');
  await fillIn(page, {
    'tensioner.thread.designation': 'Tr20x4',
    'use.torque': '5',
    'band.bodyWidth': '20',
    'band.thickness': '0.8',
  });
  await openAllParts(page);
  const predicted = async () =>
    Number.parseFloat(/([\d.]+) MPa/.exec(await resultText(page, 'predicted'))?.[1] ?? '');
  const two = await predicted();
  await page.getByLabel('one strip, no wheels').check();
  await expect(box(page, 'mill.wheelDiameter1')).toHaveCount(0);
  await expect(box(page, 'mill.stripLength')).toBeVisible();
  await expect.poll(async () => (await predicted()) / two).toBeCloseTo(2, 1);
  await box(page, 'target.stress').fill('60');
  expect(await resultText(page, 'theory-setting')).toMatch(/N·m/);
  await expect(page.getByText('Bending over the wheel is not checked')).toHaveCount(0);
});

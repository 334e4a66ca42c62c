/**
 * The whole main job on two invented mills, typed from scratch by keyboard, against the figures worked for them
 * by hand and by simulation (40-digit arithmetic and random trials, kept with the invented mills).
 */
import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { openLive, waitUntilLive } from './open-live.ts';
import { offeredMills, openDesk, resultText, typeMill } from './worksheet-page.ts';

/** What must stand in each result; stress of B in psi, its torques in ft·lbf. */
const WORKED = {
  metric: {
    stress: ['107 ± 20 MPa', '87 to 127 MPa', '106.8 MPa', '88 to 126 MPa'],
    stretch: ['0.208 mm', '0.172 to 0.237 mm'],
    zero: ['-0.047 mm', '-0.074 to -0.013 mm'],
    predicted: ['117 MPa', '116.8 MPa'],
    agreement: ['They agree', '= -0.30'],
    efficiency: ['28.8 ± 5.3 %', '28.78 %'],
    setting: ['14.9 N·m', '14.91 N·m'],
    'expected-stretch': ['0.215 mm', '0.2146 mm'],
    'theory-setting': ['13.71 N·m'],
    'band-0': ['11.9 N·m', '11.88 N·m'],
    'band-0-dial': ['0.205 mm'],
  },
  us: {
    stress: ['18 900 ± 2700 psi', '16 200 to 21 600 psi', '18 890 psi'],
    stretch: ['0.0114 in', '0.0099 to 0.0126 in'],
    zero: ['0.0004 in', '-0.0004 to 0.0016 in'],
    predicted: ['17 500 psi', '17 530 psi'],
    agreement: ['They agree', '= 0.29'],
    efficiency: ['19.4 ± 2.8 %', '19.42 %'],
    setting: ['29.4 ft·lbf', '29.35 ft·lbf'],
    'expected-stretch': ['0.0103 in'],
    'theory-setting': ['31.54 ft·lbf'],
    'band-0': ['20.7 ft·lbf'],
    'band-0-dial': ['0.0097 in'],
  },
} as const;

async function expectWorked(page: Page, system: keyof typeof WORKED): Promise<void> {
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('.part > details'))
      fold.open = true;
  });
  const stress = page.locator('[data-result="stress"]');
  await expect(stress).toHaveClass(/is-there/);
  await stress.locator('.working > summary').click(); // the trials are run for who looks
  for (const [name, texts] of Object.entries(WORKED[system])) {
    for (const text of texts) {
      await expect.poll(() => resultText(page, name), { timeout: 15_000 }).toContain(text);
    }
  }
}

for (const [place, system, locale] of [
  [0, 'metric', 'en-GB'],
  [1, 'us', 'en-US'],
] as const) {
  test.describe(`a ${system} mill`, () => {
    test.use({ locale, permissions: ['clipboard-read', 'clipboard-write'] });

    test('typed by keyboard gives the worked figures, and keeps them', async ({
      page,
      browser,
    }) => {
      test.setTimeout(90_000);
      await openLive(page, 'worksheet/');
      const mill = (await offeredMills(page))[place];
      if (!mill) throw new Error('the page must offer its mills');
      await typeMill(page, mill);
      await expectWorked(page, system);

      await page.reload();
      await waitUntilLive(page);
      await expectWorked(page, system);
      expect(await page.locator('#box-band-bodyWidth').inputValue()).toBe(
        mill.boxes['band.bodyWidth'],
      );

      await openDesk(page);
      await page.getByRole('button', { name: 'Share', exact: true }).click();
      await page.getByRole('button', { name: 'Copy link' }).click();
      const link = await linkOf(page);
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Save a file' }).click(),
      ]);
      const file = await readFile(await download.path());

      const fresh = await browser.newContext({ locale });
      const byLink = await fresh.newPage();
      await openLive(byLink, link);
      await expectWorked(byLink, system);
      expect(new URL(byLink.url()).hash).toBe('');
      await fresh.close();

      const other = await browser.newContext({ locale });
      const byFile = await other.newPage();
      await openLive(byFile, new URL('./', page.url()).href);
      await byFile
        .getByLabel('Open a file')
        .setInputFiles({ name: 'mill.json', mimeType: 'application/json', buffer: file });
      await expectWorked(byFile, system);
      await other.close();
    });
  });
}

/** The link, from the clipboard or from the box that stands in for a closed one. */
async function linkOf(page: Page): Promise<string> {
  const box = page.locator('.share-panel textarea');
  const copied = page.getByText('The link is copied');
  await expect(box.or(copied)).toBeVisible();
  return (await box.count()) > 0
    ? box.inputValue()
    : page.evaluate(() => navigator.clipboard.readText());
}

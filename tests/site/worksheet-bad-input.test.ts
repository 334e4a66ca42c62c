/** Bad input on the worksheet: what was typed stays, a sentence says what is wrong, the rest goes on, nothing is lost. */
import { expect, type Page } from '@playwright/test';
import { test } from './kept-page.ts';
import { openLive, waitUntilLive } from './open-live.ts';
import {
  box,
  failAtFaults,
  openDesk,
  openWorksheet,
  resultText,
  trouble,
  withExample,
} from './worksheet-page.ts';

test.beforeEach(({ page }) => failAtFaults(page));

test('five readings of the thickness are taken, their mean is said, a slip among them is not', async ({
  page,
}) => {
  await withExample(page);
  const area = await resultText(page, 'section');
  await box(page, 'band.thickness').fill('1.02 1.01 1.03 1.02 1.01');
  await expect(trouble(page, 'band.thickness')).toHaveText(/^Mean of 5: 1\.018\smm\.$/);
  await expect.poll(() => resultText(page, 'section')).toContain('1.018 mm');
  expect(await resultText(page, 'section')).not.toBe(area);
  await page.locator('#units-us').check({ force: true });
  await expect(box(page, 'band.thickness')).toHaveValue('1.02 1.01 1.03 1.02 1.01 mm');
  await expect(trouble(page, 'band.thickness')).toHaveText(/^Mean of 5: 0\.0401\sin\.$/);
  await box(page, 'band.thickness').fill('.040 .041 .4');
  await expect(trouble(page, 'band.thickness')).toContainText('too far apart to be one size');
});

/** Bad inputs that can stand on a sheet at the same time, round by round. */
const ROUNDS = [
  [
    ['band.thickness', '-1', 'must be more than 0'],
    ['rig.gaugeLength', '0', 'must be more than 0'],
    ['tensioner.dragTorque', '10 000', 'Check the unit'],
    ['tensioner.friction.low', '0.5', 'Put the smaller number first'],
    ['readings.9.torque', '10000', 'Check the unit'],
    ['readings.4.dial', 'lunch', 'not a number'],
    ['target.stress', '9000', 'Check the unit'],
    ['demands.guideSpan', '-3', 'must be more than 0'],
  ],
  [
    ['band.thickness', '0', 'must be more than 0'],
    ['rig.gaugeLength', '15 N', 'this box takes a length'],
    ['readings.4.dial', '1,200', 'two ways'],
    ['demands.power', '9 m/s', 'this box takes a power'],
  ],
  [['target.stress', '900', 'STOP']],
  [
    ['band.bodyWidth', '36', 'cannot be more than the width over the teeth'],
    ['tensioner.thread.designation', 'Tr21', 'We cannot read this'],
  ],
] as const;

type Round = (typeof ROUNDS)[number];

/** Types a round, and gives what stood in its boxes before. */
async function typeRound(page: Page, round: Round): Promise<ReadonlyMap<string, string>> {
  const before = new Map<string, string>();
  for (const [path, typed, says] of round) {
    before.set(path, await box(page, path).inputValue());
    await box(page, path).fill(typed);
    await expect(trouble(page, path)).toContainText(says);
    await expect(box(page, path)).toHaveValue(typed);
  }
  return before;
}

test('what is wrong is told beside each box, and stays', async ({ page }) => {
  await withExample(page);
  const closed = page.locator('details:not([open]) > summary');
  for (const [place, round] of ROUNDS.entries())
    await test.step(`round ${place + 1}`, async () => {
      await closed.filter({ hasText: 'How slack, how tight? The window' }).click();
      const before = await typeRound(page, round);
      await page.reload();
      await waitUntilLive(page);
      for (const [path, typed, says] of round) {
        await expect(box(page, path)).toHaveValue(typed);
        await expect(trouble(page, path)).toContainText(says);
      }
      for (const [path, text] of before) await box(page, path).fill(text);
      await expect.poll(() => resultText(page, 'stress')).toContain('106.8 MPa');
    });
});

test('a bad box stops only what depends on it', async ({ page }) => {
  await withExample(page);
  await box(page, 'tensioner.friction.high').fill('slippery');
  expect(await resultText(page, 'predicted')).toContain('Look again at friction or efficiency');
  expect(await resultText(page, 'stress')).toContain('106.8 MPa');
  expect(await resultText(page, 'setting')).toContain('14.91 N·m');
});

test('a dial that runs the other way is told, and so is a stop', async ({ page }) => {
  await withExample(page);
  await page.getByLabel('rises').check();
  expect(await resultText(page, 'stress')).toContain('moved the other way');
  await page.getByLabel('falls').check();
  await box(page, 'target.makerLimitStress').fill('100');
  expect(await resultText(page, 'setting')).toContain('STOP');
  await expect(page.locator('.guard.is-stop').first()).toBeVisible();
  await page.locator('#card').evaluate((fold: HTMLDetailsElement) => {
    fold.open = true; // without scrolling to the foot of the page
  });
  await expect(page.locator('.card')).toContainText('No setting is given');
});

/** Links that cannot be opened: what each is, and what is said of it. */
const BAD_LINKS = [
  ['cut in half', '#v=1&w=q1ZKy0zNSVGyUorPzEvLVdJRKkmtKAGyS1KLS', 'damaged'],
  ['of nonsense', '#v=1&w=%00%ff', 'damaged'],
  ['of a later version', '#v=7&w=abc', 'newer version'],
  ['with both its names damaged', '#x=2&q=H4sIAAAAAAAAA6tW', 'damaged'],
  ['without its signs', '#v2wH4sIAAAAAAAAA6tW', 'damaged'],
  ['with half a sign', '#%E0%A4', 'damaged'],
] as const;

const BAD_FILES = [
  ['no JSON', 'a,b\n1,2'],
  ['JSON of another kind', '{"hello": [1, 2]}'],
  [
    'a worksheet with foreign boxes',
    '{"format":"tension-notebook worksheet","version":1,"boxes":{"__proto__x":"1"}}',
  ],
] as const;

/** Has something else said, so that the next refusal is a new one. */
async function sayElse(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Save a file' }).click();
  await expect(page.locator('.desk-notice')).not.toContainText('unchanged');
}

/** The last refusal is told, and the work on the table is as it was. */
async function staysUnchanged(page: Page): Promise<void> {
  await expect(page.locator('.desk-notice')).toContainText('unchanged');
  expect(await resultText(page, 'stress')).toContain('106.8 MPa');
}

test('a link that cannot be opened and a file that is none of ours are refused, and the work on the table stays', async ({
  page,
}) => {
  await withExample(page);
  await openDesk(page);
  for (const [name, fragment, says] of BAD_LINKS)
    await test.step(`a link ${name}`, async () => {
      await sayElse(page);
      await page.evaluate((hash) => {
        location.hash = hash;
      }, fragment);
      await expect(page.locator('.desk-notice')).toContainText(says);
      await staysUnchanged(page);
    });
  for (const [name, text] of BAD_FILES)
    await test.step(`a file of ${name}`, async () => {
      await sayElse(page);
      const file = { name: 'x.json', mimeType: 'application/json', buffer: Buffer.from(text) };
      await page.getByLabel('Open a file').setInputFiles(file);
      await staysUnchanged(page);
    });
});

test('the name of a place on the page is no damaged link, and opens it', async ({ page }) => {
  await openLive(page, 'worksheet/#readings');
  await expect(page.locator('.desk-notice')).toHaveText('');
  await expect(box(page, 'readings.0.torque')).toBeVisible();
  await expect(box(page, 'rig.gaugeLength')).toBeHidden();
  await page.locator('#readings summary').first().click();
  await expect(box(page, 'readings.0.torque')).toBeHidden();
  await page.getByRole('link', { name: 'the caution' }).click();
  await expect(box(page, 'readings.0.torque')).toBeVisible();
});

/** Writes texts into every sheet of the browser's database, as a fault would. */
async function changeKeptSheets(texts: Readonly<Record<string, string>>): Promise<void> {
  const settled = <T>(request: IDBRequest<T>) =>
    new Promise<T>((resolve) => {
      request.onsuccess = () => resolve(request.result);
    });
  const database = await settled(indexedDB.open('tension-notebook'));
  const sheets = database.transaction('sheets', 'readwrite').objectStore('sheets');
  for (const record of await settled(sheets.getAll())) {
    Object.assign(record.document.typed, texts);
    await settled(sheets.put(record));
  }
  database.close();
}

test('a kept sheet with bad boxes opens with the rest, and shows them until they are seen', async ({
  page,
}) => {
  await withExample(page);
  await expect(page.locator('.desk-picker .hint')).toContainText('Saved');
  await page.evaluate(changeKeptSheets, {
    'target.stress': '9'.repeat(300),
    'band.colour': '<b>red</b>',
  });
  await page.reload();
  await waitUntilLive(page);
  expect(await resultText(page, 'stress')).toContain('106.8 MPa');
  const aside = page.locator('.set-aside');
  await expect(aside).toContainText('2 boxes of this sheet could not be read.');
  await aside.locator('summary').click();
  await expect(aside.locator('dl')).toContainText('band.colour<b>red</b>');
  await expect(aside.locator('dt').first()).toHaveText('target stress');
  await box(page, 'label').fill('Mill A again');
  await page.reload();
  await waitUntilLive(page);
  await expect(aside).toContainText('2 boxes');
  await aside.getByRole('button', { name: 'I have seen it' }).click();
  await expect(aside).toHaveCount(0);
  await page.keyboard.press('Control+z');
  await expect(aside).toContainText('2 boxes');
});

for (const how of ['forbidden', 'full'] as const) {
  test(`with storage ${how} the sheet works and says that it is not kept`, async ({ page }) => {
    await using _storage = await page.addInitScript((kind) => {
      const refuse = () => {
        throw new DOMException('no room', 'QuotaExceededError');
      };
      if (kind === 'full') IDBObjectStore.prototype.put = refuse;
      else IDBFactory.prototype.open = refuse;
    }, how);
    await withExample(page);
    await expect(page.locator('.desk-notice')).toContainText('cannot keep “Mill A, Ottersleigh”');
    await openDesk(page);
    await page.getByRole('button', { name: 'New sheet' }).click();
    await page.locator('.desk-picker select').selectOption({ label: 'Mill A, Ottersleigh' });
    await expect.poll(() => resultText(page, 'stress')).toContain('106.8 MPa');
  });
}

test('a table pasted into the first cell fills the rows', async ({ page }) => {
  await openWorksheet(page);
  await box(page, 'readings.0.torque').focus();
  await page.evaluate(() => {
    const data = new DataTransfer();
    data.setData('text/plain', '1.5\t0.470\r\n3\t0.475\r\nfour\t0.460\r\n');
    document.activeElement?.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
    );
  });
  await expect(box(page, 'readings.1.dial')).toHaveValue('0.475');
  await expect(trouble(page, 'readings.2.torque')).toContainText('not a number');
});

/** The worksheet page as a person with a keyboard uses it. */
import { expect, type Page } from '@playwright/test';
import { findField } from '../../src/form/paths.ts';
import { SHEET_PARTS, type SheetPart } from '../../src/worksheet/folds/sheet-parts.ts';
import { openLive } from './open-live.ts';

const THREAD = 'tensioner.thread.designation';
const FOLDED = 'band.widthOverTeeth';
const PARTS: readonly SheetPart[] = Object.values(SHEET_PARTS);

/** An invented mill, as a shop would write it on the sheet. */
export interface Mill {
  readonly label: string;
  readonly thread: string;
  readonly boxes: Readonly<Record<string, string>>; // and choices, in the order of the form
  readonly readings: readonly (readonly string[])[];
  readonly bands: readonly Readonly<Record<string, string>>[];
}

/** The text of a result with plain spaces and a plain minus, once it is that of the sheet as it stands. */
export async function resultText(page: Page, name: string): Promise<string> {
  await expect(page.locator('[data-worksheet="sheet"]')).not.toHaveAttribute('aria-busy');
  const text = (await page.locator(`[data-result="${name}"]`).textContent()) ?? '';
  return text
    .replace(/[\u00a0\u202f]/g, ' ')
    .replaceAll('−', '-')
    .replace(/\s+/g, ' ');
}

/** A box of the sheet by its path. */
export const box = (page: Page, path: string) => page.locator(`#box-${path.replaceAll('.', '-')}`);

/** What is told beside a box. */
export const trouble = (page: Page, path: string) =>
  page.locator(`#box-${path.replaceAll('.', '-')}-trouble`);

/** The page with the first invented mill on it, worked out. */
export async function withExample(page: Page): Promise<void> {
  await openWorksheet(page);
  await page.locator('.desk-offer button').first().click();
  await expect.poll(() => resultText(page, 'stress')).toContain('106.8 MPa');
}

/** Fails the test at any fault of the page. */
export function failAtFaults(page: Page): void {
  page.on('pageerror', (error) => {
    throw error;
  });
}

/** Opens one fold by keyboard, unless it stands open. */
async function openFold(page: Page, fold: string): Promise<void> {
  const summary = page.locator(`${fold}:not([open]) > summary`);
  if ((await summary.count()) > 0) await summary.press('Enter');
  await expect(page.locator(`${fold}[open]`)).toHaveCount(1);
}

/** Opens the fold with the tools of the desk. */
export const openDesk = (page: Page): Promise<void> => openFold(page, '.desk-more');

/** Opens every part by keyboard, as someone does who comes back and wants to see it all. */
export async function openAllParts(page: Page): Promise<void> {
  const button = page.getByRole('button', { name: 'Open all parts' });
  if ((await button.count()) > 0) await button.press('Enter');
  await expect(page.locator('.part > details:not([open])')).toHaveCount(0);
  for (const part of ['tensioner', 'mill', 'rig', 'readings', 'setting'])
    await expect(page.locator(`#${part} .part-boxes input`).first()).toBeAttached();
}

/** Opens the page, waits until it is alive, and opens every part. */
export async function openWorksheet(page: Page, fragment = ''): Promise<void> {
  await openLive(page, `worksheet/${fragment}`);
  await openAllParts(page);
}

/** Opens a sheet as a file. */
export async function openFile(page: Page, sheet: object): Promise<void> {
  const buffer = Buffer.from(JSON.stringify(sheet));
  const file = { name: 'sheet.json', mimeType: 'application/json', buffer };
  await page.getByLabel('Open a file').setInputFiles(file);
}

/** Opens the invented mill that fits the units, and waits for its chart. */
export async function openExample(page: Page): Promise<void> {
  await openWorksheet(page);
  await page.locator('.desk-offer button').first().click();
  await page.waitForSelector('.stress-chart');
}

const focused = (page: Page) =>
  page.evaluate(() => {
    const element = document.activeElement;
    return element instanceof HTMLInputElement ? (element.dataset['path'] ?? element.name) : '';
  });

/** Presses Tab until the wanted box or choice has the focus. */
export async function tabTo(page: Page, wanted: string): Promise<void> {
  for (let presses = 0; presses < 120; presses += 1) {
    if ((await focused(page)) === wanted) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached ${wanted}`);
}

/** Types one box, reached by Tab alone; one that few people need is unfolded first. */
export async function typeInto(page: Page, path: string, text: string): Promise<void> {
  const box = page.locator(`[data-path="${path}"]`);
  const fold = page.locator('details.seldom:not([open])').filter({ has: box });
  if ((await fold.count()) > 0) await fold.locator('summary').press('Enter');
  await tabTo(page, path);
  await page.keyboard.type(text);
}

/** Chooses by arrow key in a group of radio buttons reached by Tab; where none is chosen yet, the space bar takes the first. */
async function choose(page: Page, name: string, options: readonly string[], wanted: string) {
  await tabTo(page, `choice-${name}`);
  const offered = options.filter((option) => option !== 'unasked');
  if (offered.length < options.length) await page.keyboard.press('Space');
  for (let step = 0; step < offered.indexOf(wanted); step += 1)
    await page.keyboard.press('ArrowDown');
}

/** One column of the series typed as a gauge does: number, Enter. */
async function typeColumn(page: Page, column: string, cells: readonly string[]): Promise<void> {
  await tabTo(page, `readings.0.${column}`);
  for (const cell of cells) {
    await page.keyboard.type(cell);
    await page.keyboard.press('Enter');
  }
  expect(await focused(page)).toBe(`readings.${cells.length}.${column}`);
}

/** Where a path stands on the page: after the parts before its own, and in its part behind them where few people need it. */
function placeOf(path: string): number {
  const part = PARTS.findIndex(({ holds }) => holds?.test(path));
  return 2 * part + Number(path === FOLDED);
}

/** A whole mill typed from scratch by keyboard. */
export async function typeMill(page: Page, mill: Mill): Promise<void> {
  await typeInto(page, 'label', mill.label);
  await openAllParts(page);
  await typeInto(page, THREAD, mill.thread);
  const boxes = Object.entries(mill.boxes).sort(([a], [b]) => placeOf(a) - placeOf(b));
  for (const [path, text] of boxes) {
    if (path.startsWith('target') && !(await page.locator('#box-readings-0-torque').inputValue()))
      await typeReadings(page, mill);
    const field = findField(path);
    if (field && 'options' in field) await choose(page, path, Object.keys(field.options), text);
    else await typeInto(page, path, text);
  }
  for (const [place, band] of mill.bands.entries()) {
    if (place > 0) await page.locator('summary', { hasText: 'Add a band' }).press('Enter');
    for (const [name, text] of Object.entries(band))
      if (text !== '') await typeInto(page, `bands.${place}.${name}`, text);
  }
}

async function typeReadings(page: Page, { readings }: Mill): Promise<void> {
  for (const [place, column] of ['torque', 'dial', 'wholeTurns', 'turns'].entries()) {
    const cells = readings.map((row) => row[place] ?? '');
    if (cells.every((cell) => cell === '')) continue;
    if (column === 'turns') await page.getByLabel('I also noted turns of the screw').press('Space');
    if (place > 0) await page.locator('#box-readings-0-torque').focus();
    await typeColumn(page, column, cells);
  }
}

interface OfferedDocument {
  readonly typed: Readonly<Record<string, string>>;
  readonly tables: Readonly<Record<'readings' | 'bands', Table>>;
}

type Table = readonly (readonly string[])[];

/** The rows of a table, each cell by the name of its column. */
const rowsOf = ([columns = [], ...rows]: Table) =>
  rows.map((row) => Object.fromEntries(columns.map((name, at) => [name, row[at] ?? ''])));

/** The invented mills that the page offers, to be typed by hand; what is chosen on them is chosen by hand too. */
export async function offeredMills(page: Page): Promise<readonly Mill[]> {
  const text = (await page.locator('#example-mills').textContent()) ?? '[]';
  return JSON.parse(text).map(({ typed, tables }: OfferedDocument) => {
    const { label = '', [THREAD]: thread = '', ...others } = typed;
    const { readings, bands } = tables;
    const [, ...rows] = readings;
    return { label, thread, boxes: others, readings: rows, bands: rowsOf(bands) };
  });
}

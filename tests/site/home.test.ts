/** The home page: what is above the fold, the mill that turns, the two doors, and where the reader left off. */
import { expect, type Locator, type Page, test as testAlone } from '@playwright/test';
import { collisionsIn } from './collisions.ts';
import { cornersOfFigure, view } from './drive-figures.ts';
import { test } from './kept-page.ts';
import { openLive } from './open-live.ts';

const SCREENS = [
  { width: 1366, height: 768 },
  { width: 390, height: 844 },
];
const SYSTEMS = ['metric', 'us'] as const;
const LEFT_OFF = { last: 'steel-in-the-section', heading: 'in-numbers', opened: ['stiff-spring'] };

const finding = (page: Page) => page.locator('.finding').filter({ visible: true });
const grip = (page: Page) => page.locator('svg .handle').filter({ visible: true });
const leftOff = (page: Page) => page.locator('.left-off');
const doors = (page: Page) => page.getByRole('navigation', { name: 'Begin' }).getByRole('link');

/** What the home page owes at a glance. */
const atAGlance = (page: Page): readonly Locator[] => [
  page.locator('h1'),
  page.locator('.subtitle'),
  finding(page),
  page.locator('svg').filter({ visible: true }),
  page.locator('.slider'),
  doors(page).nth(0),
  doors(page).nth(1),
];

/** Opens home, and waits until the browser has drawn the mill. */
async function openHome(page: Page): Promise<void> {
  await openLive(page, './');
  await expect(page.locator('live-figure')).toHaveAttribute('data-said', /./);
}

/** Opens home as a reader who was in the third lesson. */
async function comeBack(page: Page): Promise<void> {
  await page.goto('./');
  await page.evaluate((kept) => localStorage.setItem('lessons', JSON.stringify(kept)), LEFT_OFF);
  await openHome(page);
}

test('all is above the fold of a laptop and a phone, in both systems', async ({ page }) => {
  await comeBack(page);
  for (const screen of SCREENS)
    for (const system of SYSTEMS)
      await test.step(`${screen.width} x ${screen.height}, ${system}`, async () => {
        await page.setViewportSize(screen);
        await page.locator(`#units-${system}`).check({ force: true });
        for (const part of [...atAGlance(page), leftOff(page)]) {
          await expect(part).toBeInViewport({ ratio: 1 });
        }
      });
});

test('the handle turns by keys and by pointer, and the mill answers', async ({ page }) => {
  await openHome(page);
  const said = [await finding(page).textContent()];
  await grip(page).press('PageUp');
  await expect(finding(page)).not.toHaveText(said[0] ?? '');
  said.push(await finding(page).textContent());
  const box = await grip(page).boundingBox();
  if (!box) throw new Error('the grip is there');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 30, y + 30, { steps: 5 });
  await page.mouse.up();
  await expect(finding(page)).not.toHaveText(said[1] ?? '');
  await expect(page.locator('#input-torque')).not.toHaveValue('19');
});

test('the slider moves the drawn dial and the bar of stress with it', async ({ page }) => {
  await openHome(page);
  const drawn = () =>
    page
      .locator('svg [data-sym="stretch"] .steel-line, svg [data-sym="stress"] .steel-fill')
      .filter({ visible: true })
      .evaluateAll((parts) =>
        parts.map((part) => part.getAttribute('d') ?? part.getAttribute('width')),
      );
  const before = await drawn();
  expect(before).toHaveLength(2);
  await page.locator('.slider').press('End');
  await expect(async () => {
    const after = await drawn();
    for (const [place, shape] of before.entries()) expect(after[place]).not.toBe(shape);
  }).toPass();
});

test('no words collide in the drawing, wherever the handle stands', async ({ page }) => {
  await openHome(page);
  const found: string[] = [];
  for (const width of [390, 1200]) {
    for (const system of SYSTEMS) {
      await view(page, width, system);
      const corners = await cornersOfFigure(page.locator('live-figure'));
      expect(corners).toHaveLength(2);
      found.push(
        ...corners.flatMap(({ where, seen }) =>
          collisionsIn(seen).map((one) => `${width} ${system} ${where}: ${one}`),
        ),
      );
    }
  }
  expect(found).toEqual([]);
});

test('two doors lead to the first lesson and to the worksheet', async ({ page }) => {
  for (const [place, heading] of [
    [0, 'From the handle to the band'],
    [1, /worksheet/i],
  ] as const) {
    await page.goto('./');
    await doors(page).nth(place).click();
    await expect(page.locator('h1')).toHaveText(heading);
  }
});

test('a lesson that was opened is told, leads on, and is forgotten', async ({ page }) => {
  await openHome(page);
  await expect(leftOff(page)).toBeHidden();
  await openLive(page, './lessons/steel-in-the-section/');
  await page.mouse.wheel(0, 400);
  await page.waitForFunction(() => localStorage.getItem('lessons') !== null);
  await openHome(page);
  await expect(leftOff(page)).toContainText('You were in lesson 3, The steel in the section.');
  await expect(page.locator('[data-opened]').filter({ visible: true })).toHaveCount(1);
  await leftOff(page).getByRole('button', { name: 'Forget' }).click();
  await expect(leftOff(page)).toContainText('Forgotten');
  await expect(leftOff(page)).toBeFocused();
  await page.reload();
  await expect(leftOff(page)).toBeHidden();
  expect(await page.evaluate(() => localStorage.getItem('lessons'))).toBeNull();
});

test('going on opens the lesson where it was left', async ({ page }) => {
  await comeBack(page);
  await leftOff(page).getByRole('link', { name: 'Go on' }).click();
  await expect(page).toHaveURL(/lessons\/steel-in-the-section\/#in-numbers$/);
  await expect(page.locator('#in-numbers')).toBeInViewport();
});

testAlone('a browser that keeps nothing has a home and lessons all the same', async ({ page }) => {
  const faults: string[] = [];
  page.on('pageerror', ({ message }) => faults.push(message));
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('forbidden', 'SecurityError');
      },
    });
  });
  await openLive(page, './lessons/stiff-spring/');
  await openHome(page);
  await expect(leftOff(page)).toBeHidden();
  await grip(page).press('ArrowRight');
  await expect(finding(page)).toHaveText(/^14\.5/);
  expect(faults).toEqual([]);
});

testAlone('nothing shifts while home comes alive', async ({ page }) => {
  await comeBack(page);
  await page.addInitScript(() => {
    const shifts: number[] = [];
    Object.assign(window, { shifts });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries())
        shifts.push((entry as unknown as { value: number }).value);
    }).observe({ type: 'layout-shift', buffered: true });
  });
  for (const screen of SCREENS) {
    await page.setViewportSize(screen);
    await openHome(page);
    await page.waitForLoadState('networkidle');
    const shifts = await page.evaluate(() => (window as unknown as { shifts: number[] }).shifts);
    expect(
      shifts.reduce((sum, value) => sum + value, 0),
      `${screen.width}`,
    ).toBeLessThan(0.005);
  }
});

testAlone.describe('without script', () => {
  testAlone.use({ javaScriptEnabled: false });
  testAlone('the drawing stands still and the doors work', async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto('./');
    await expect(finding(page)).toHaveText(/^14\.0/);
    await expect(page.locator('.slider')).toBeHidden();
    await expect(page.getByText('turn it').filter({ visible: true })).toHaveCount(0);
    await expect(leftOff(page)).toBeHidden();
    await expect(doors(page).nth(1)).toBeInViewport({ ratio: 1 });
    await doors(page).nth(0).click();
    await expect(page.locator('h1')).toHaveText('From the handle to the band');
  });
});

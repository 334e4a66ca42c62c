/** What the whole page of a lesson owes beside its first figure: the phone's width, and paper. */
import { expect, type Page, test } from '@playwright/test';
import { openLive, waitUntilLive } from './open-live.ts';
import { LESSONS } from './pages.ts';

/** The equations that a reader would have to push sideways to see their result. */
const tooWide = (page: Page) =>
  page
    .locator('.equation')
    .evaluateAll((all) =>
      all
        .filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth + 1)
        .map(({ textContent }) => textContent),
    );

/** The quantities whose letters stand in equations, and those that are named: under one, or by the text as a letter. */
const letters = (page: Page) =>
  page.evaluate(() => {
    const names = (selector: string, isMeant = (_: Element) => true) =>
      [...document.querySelectorAll(selector)]
        .filter(isMeant)
        .map((element) => element.getAttribute('data-sym'));
    const isLetter = ({ textContent }: Element) => (textContent ?? '').length <= 3;
    return {
      used: [...new Set(names('.equation .katex-html [data-sym]:not(:has(.value))'))],
      under: names('.letters > [data-sym]'),
      inText: names('.prose .symbol', isLetter),
    };
  });

/** Opens what is folded away, as a reader does, and as paper does by itself. */
const unfold = (page: Page) =>
  page.locator('details.fold').evaluateAll((all) => {
    for (const fold of all) fold.setAttribute('open', '');
  });

test('there are lessons to try', () => expect(LESSONS.length).toBeGreaterThan(5));

for (const address of LESSONS) {
  test(`${address} shows every equation with its result on a phone`, async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 800 });
    await openLive(page, address);
    for (const system of ['us', 'metric']) {
      await page.locator(`#units-${system}`).check({ force: true });
      expect(await tooWide(page)).toEqual([]);
    }
  });

  test(`${address} names every letter of its equations, none twice`, async ({ page }) => {
    await page.goto(address);
    const { used, under, inText } = await letters(page);
    expect(used.length).toBeGreaterThan(3);
    expect(used.filter((name) => ![...under, ...inText].includes(name))).toEqual([]);
    expect(new Set([...under, ...inText]).size).toBe(under.length + new Set(inText).size);
  });
}

test('a link’s state goes to paper in every figure, also far from the screen', async ({ page }) => {
  await page.goto('./lessons/counting-turns/');
  const far = page.locator('[data-figure="frame"]').locator('.finding').filter({ visible: true });
  await unfold(page);
  const before = (await far.textContent()) ?? '';
  await page.goto('./lessons/counting-turns/#v=1&readStretch=0.0002');
  await page.reload();
  await waitUntilLive(page);
  await unfold(page);
  await expect(far).toHaveText(before);
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await expect(far).not.toHaveText(before);
});

test('a choice opens from an old link’s number, and is kept in the link by its name', async ({
  page,
}) => {
  await openLive(page, './lessons/counting-turns/#v=1&tensioner=2');
  await unfold(page);
  const choice = (words: string) => page.getByRole('radio', { name: words });
  await expect(choice('Yarrock')).toBeChecked();
  await expect(page.locator('live-input[data-name="turnsSoft"]')).toBeVisible();
  await choice('Dunmarrow').check();
  await expect(page).toHaveURL(/#v=1&tensioner=oil$/);
  await expect(page.locator('live-input[data-name="pressure"]')).toBeVisible();
  await expect(page.locator('live-input[data-name="turnsSoft"]')).toBeHidden();
});

test.describe('a reader of US units', () => {
  test.use({ locale: 'en-US' });

  test('finds them in every box before the lesson’s script is there', async ({ page }) => {
    const scripts = /\/assets\/(?!(parts-)?before-paint).*\.js$/;
    await page.route(scripts, (route) => route.abort());
    await page.goto('./lessons/handle-to-band/');
    const stiffness = page.locator('live-input[data-name="frameStiffness"]');
    const shown = () => stiffness.locator('.box').inputValue();
    await expect(stiffness.locator('.unit')).toHaveText(/lbf\/in/, { useInnerText: true });
    const before = await shown();
    await page.unroute(scripts);
    await openLive(page, './lessons/handle-to-band/');
    expect(before).toBe(await shown());
  });
});

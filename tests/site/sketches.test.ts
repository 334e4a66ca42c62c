/** The small drawings of the reference are shown at their own size, legibly, and keep their lettering on their sheets. */
import { expect } from '@playwright/test';
import { test } from './kept-page.ts';
import { openLive } from './open-live.ts';

const SMALLEST = 12; // px, of any lettering
const SLACK = 1; // px, of a halo or a side bearing

interface Lettering {
  readonly words: string;
  readonly size: number;
  readonly beyond: number;
}

/** Each piece of lettering: its size as shown, and how far it reaches over the edge of its sheet or of the page. */
const lettering = (slack: number): readonly Lettering[] =>
  [...document.querySelectorAll<SVGTextElement>('.sketch text')].map((text) => {
    const sheet = text.ownerSVGElement as SVGSVGElement;
    const [own, around] = [text.getBoundingClientRect(), sheet.getBoundingClientRect()];
    const scale = around.width / sheet.viewBox.baseVal.width;
    const right = Math.min(around.right, document.documentElement.clientWidth);
    return {
      words: `${text.textContent} in ${sheet.getAttribute('aria-label')}`,
      size: scale * Number.parseFloat(getComputedStyle(text).fontSize),
      beyond: Math.max(around.left - own.left, own.right - right, around.top - own.top) - slack,
    };
  });

for (const address of ['./reference/glossary/', './reference/formulae/']) {
  test(`${address} letters its drawings legibly on a phone and a laptop`, async ({ page }) => {
    await openLive(page, address);
    for (const width of [360, 1366])
      await test.step(`${width} px wide`, async () => {
        await page.setViewportSize({ width, height: 800 });
        const found = await page.evaluate(lettering, SLACK);
        expect(found.length).toBeGreaterThan(0);
        expect(found.filter(({ size }) => size < SMALLEST)).toEqual([]);
        expect(found.filter(({ beyond }) => beyond > 0)).toEqual([]);
      });
  });
}

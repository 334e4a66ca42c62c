/** How the printed card looks: its letters, its gaps, what stands beside its numerals, what is cut. */
import type { Page } from '@playwright/test';

const POINT = 96 / 72; // px

/** The smallest letters on the card, points. */
export const smallest = (page: Page): Promise<number> =>
  page.locator('.card').evaluate((card, point) => {
    const holds = (each: Element) =>
      [...each.childNodes].some(
        ({ nodeType, textContent }) => nodeType === 3 && textContent?.trim(),
      );
    const sizes = [...card.querySelectorAll('*')]
      .filter((each) => !each.closest('svg') && holds(each) && each.checkVisibility())
      .map((each) => Number.parseFloat(getComputedStyle(each).fontSize) / point);
    return Math.min(...sizes);
  }, POINT);

/** The widest strip across the card in which nothing is printed, as a share of its height; the log is for the pen. */
export const widestGap = (page: Page): Promise<number> =>
  page.locator('.card').evaluate((card) => {
    const { top, height } = card.getBoundingClientRect();
    const printed = 'h2, h3, p, strong, li, dt, dd, th, td, svg, .card-log';
    const spans = [...card.querySelectorAll(printed)]
      .map((each) => each.getBoundingClientRect())
      .filter((each) => each.height > 0)
      .map((each) => [each.top - top, each.bottom - top] as const)
      .sort(([a], [b]) => a - b);
    const gaps: number[] = [];
    let reached = 0;
    for (const [from, to] of [...spans, [height, height] as const]) {
      gaps.push(from - reached);
      reached = Math.max(reached, to);
    }
    return Math.max(...gaps) / height;
  });

/** The bands whose words reach out of their block. */
export const spilled = (page: Page): Promise<readonly string[]> =>
  page.locator('.card-torques > section').evaluateAll((blocks) =>
    blocks
      .filter((block) => {
        const { bottom } = block.getBoundingClientRect();
        return [...block.querySelectorAll('dd')].some(
          (each) => each.getBoundingClientRect().bottom > bottom + 1,
        );
      })
      .map(({ textContent }) => textContent ?? ''),
  );

/** How high the numerals are, as shares of the sheet. */
export const numerals = (page: Page): Promise<readonly number[]> =>
  page.locator('.card').evaluate((card) => {
    const { height } = card.getBoundingClientRect();
    return [...card.querySelectorAll('.card-own .card-number')].map(
      (each) => Number.parseFloat(getComputedStyle(each).fontSize) / height,
    );
  });

interface Gaps {
  readonly before: number; // from “Set to” to the number
  readonly behind: number; // from its unit to its other unit, which is below it
  readonly beside: number; // from all of that to the words on its right, where they are there
}

/** How far the words of each large numeral are from it, in letters of the card. */
export const gapsOf = (page: Page): Promise<readonly Gaps[]> =>
  page.locator('.card-own').evaluateAll((blocks) =>
    blocks.map((block) => {
      const at = (part: string) => block.querySelector(part)?.getBoundingClientRect();
      const none = new DOMRect();
      const [number, units] = [at('.card-number') ?? none, at('.card-units') ?? none];
      const [words, rest] = [at('.card-torque > span') ?? none, at('dl') ?? none];
      const letter = Number.parseFloat(getComputedStyle(block).fontSize);
      const isOnItsRight = rest.left > number.left;
      return {
        before: (number.left - words.right) / letter,
        behind: ((at('.card-same')?.left ?? units.left) - (at('.card-unit') ?? none).left) / letter,
        beside: isOnItsRight ? (rest.left - units.right) / letter : 0,
      };
    }),
  );

/** The facts whose words do not fit where they stand. */
export const factsCut = (page: Page): Promise<readonly string[]> =>
  page
    .locator('.card-facts dd')
    .evaluateAll((facts) =>
      facts
        .filter((each) => each.scrollWidth > each.clientWidth)
        .map(({ textContent }) => textContent ?? ''),
    );

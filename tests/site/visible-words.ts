/** The words of a page that a reader meets without opening anything. */
import type { Page } from '@playwright/test';

/** Every word that is shown: nothing folded, nothing for screen readers alone, a formula once. */
export function visibleWords(page: Page): Promise<readonly string[]> {
  return page.locator('article').evaluate((article) => {
    const isShown = (element: Element) => {
      const { width, height } = element.getBoundingClientRect();
      return width > 1 && height > 1 && element.checkVisibility({ visibilityProperty: true });
    };
    const texts: string[] = [];
    const walker = document.createTreeWalker(article, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement;
      if (!parent || parent.closest('.katex-mathml, .visually-hidden, script, style')) continue;
      if (isShown(parent)) texts.push(node.textContent ?? '');
    }
    return texts
      .join(' ')
      .split(/\s+/)
      .filter((word) => /[\p{L}\d]/u.test(word));
  });
}

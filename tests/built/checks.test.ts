/** The page of checks shows every printed figure with ours beside it. */
import { describe, expect, it } from 'vitest';
import { agrees, publishedRows, rememberedRows, solvedRows } from '../published/rows.ts';
import { unused } from '../published/unused.ts';
import { SITES } from './built-site.ts';
import { attribute } from './html.ts';

describe.each(SITES)('the page of checks at $base', ({ pages }) => {
  const { html = '', tags = [] } = pages.get('reference/checks/index.html') ?? {};

  it('has a line for each figure, those counted apart too', () => {
    const lines = tags.filter(
      (tag) => attribute(tag, 'scope') === 'row' && attribute(tag, 'class') === 'quantity',
    );
    expect(lines).toHaveLength(publishedRows.length + solvedRows.length + rememberedRows.length);
  });

  it('says how many there are, that they agree, and what was not compared', () => {
    expect(html).toContain(`${publishedRows.length} figures from`);
    expect(html.includes('All of them agree.')).toBe(publishedRows.every(agrees));
    expect(tags.filter(({ tagName }) => tagName === 'dd')).toHaveLength(unused.length);
  });
});

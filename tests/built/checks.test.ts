/** The page of checks shows every printed figure with ours beside it. */
import { describe, expect, it } from 'vitest';
import { agrees, publishedRows, rememberedRows } from '../published/rows.ts';
import { unused } from '../published/unused.ts';
import { SITES } from './built-site.ts';

describe.each(SITES)('the page of checks at $base', ({ pages }) => {
  const html = pages.get('reference/checks/index.html')?.html ?? '';

  it('has a line for each figure, those from memory too', () => {
    const lines = html.match(/<th scope="row" class="quantity"/g) ?? [];
    expect(lines).toHaveLength(publishedRows.length + rememberedRows.length);
  });

  it('says how many there are, that they agree, and what was not compared', () => {
    expect(html).toContain(`${publishedRows.length} figures from`);
    expect(html.includes('All of them agree.')).toBe(publishedRows.every(agrees));
    expect(html.match(/<dd\b/g)).toHaveLength(unused.length);
  });
});

// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { nearestAddress, tellNearest } from '../../src/live/nearest-page.ts';

const PAGES = ['/lessons/', '/lessons/stiff-spring/', '/lessons/counting-turns/', '/worksheet/'];

describe('the nearest page', () => {
  it.each([
    ['/lessons/stif-spring', '/lessons/stiff-spring/'],
    ['/Lessons/Counting_Turns.html', '/lessons/counting-turns/'],
    ['/lesson/', '/lessons/'],
    ['/work-sheet/', '/worksheet/'],
  ])('to %s is %s', (asked, near) => expect(nearestAddress(asked, PAGES)).toBe(near));

  it.each(['/', '/prices/', '/x/y/z/'])('to %s is none', (asked) =>
    expect(nearestAddress(asked, PAGES)).toBeUndefined(),
  );

  it('is told with its name, and not where there is none', () => {
    document.body.innerHTML = `
      <article><p data-nearest hidden>Perhaps <a href="/">home</a>.</p>
      <ul><li><a href="/worksheet/">The worksheet</a></li></ul></article>`;
    const told = document.querySelector<HTMLElement>('[data-nearest]');
    history.replaceState(null, '', '/prices/');
    tellNearest();
    expect(told?.hidden).toBe(true);
    history.replaceState(null, '', '/work-sheet/');
    tellNearest();
    expect(told?.hidden).toBe(false);
    expect(told?.textContent).toBe('Perhaps The worksheet.');
  });
});

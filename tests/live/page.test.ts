// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { startPage } from '../../src/live/page.ts';
import { type PageStore, setInput } from '../../src/live/store.ts';
import { only, startAfresh } from './toy-page.ts';

const started: PageStore[] = [];

/** Starts the page of a lesson at a fragment. */
async function start(lesson: string, fragment = ''): Promise<PageStore | undefined> {
  document.body.innerHTML = `<p data-link-refused hidden></p>${lesson}`;
  history.replaceState(null, '', fragment || location.pathname);
  const store = await startPage();
  if (store) started.push(store);
  return store;
}
const STIFF_SPRING = '<article data-model="stiff-spring"></article>';

beforeEach(() => {
  startAfresh();
  vi.useFakeTimers();
  vi.spyOn(window, 'addEventListener').mockImplementation(() => undefined); // or it would follow later tests' links
});
/** A page goes on until it is left; here it lets go of its address, and stays where it is in other units. */
afterEach(() => {
  for (const store of started.splice(0)) setInput(store, 'stretch', 0.0024);
  vi.runAllTimers();
  vi.useRealTimers();
  vi.restoreAllMocks();
});

describe('the start of a page', () => {
  it('makes the store of its lesson, at the lesson’s own numbers', async () => {
    const store = await start(STIFF_SPRING);
    expect(store?.model.name).toBe('stiff-spring');
    expect(store?.values.value['gaugeLength']).toBe(0.3);
    expect(only('[data-link-refused]').hidden).toBe(true);
  });

  it('takes what a link has set, and tells what of it could not be used', async () => {
    const store = await start(STIFF_SPRING, '#v=1&gaugeLength=0.5&colour=red');
    expect(store?.values.value['gaugeLength']).toBe(0.5);
    expect(only('[data-link-refused]').textContent).toContain('colour=red');
  });

  it.each([
    ['no lesson', ''],
    ['a lesson that there is not', '<article data-model="no-such-lesson"></article>'],
  ])('of a page with %s makes nothing, and leaves its address alone', async (_, html) => {
    expect(await start(html, '#v=1&gaugeLength=0.5')).toBeUndefined();
    vi.runAllTimers();
    expect(location.hash).toBe('#v=1&gaugeLength=0.5');
    expect(only('[data-link-refused]').hidden).toBe(true);
  });
});

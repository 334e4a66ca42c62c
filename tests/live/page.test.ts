// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { stiffSpring } from '../../src/lessons/stiff-spring/model.ts';
import { startPage } from '../../src/live/page.ts';
import { type PageStore, setInput } from '../../src/live/store.ts';
import { putOnPage } from '../../src/models/on-page.ts';
import { only, startAfresh } from './toy-page.ts';

const started: PageStore[] = [];

/** Starts the page at a fragment. */
async function start(fragment = '', own = ''): Promise<PageStore | undefined> {
  document.body.innerHTML = `<article ${own}><p data-link-refused hidden></p></article>`;
  history.replaceState(null, '', fragment || location.pathname);
  const store = await startPage();
  if (store) started.push(store);
  return store;
}

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
  it('without a lesson makes nothing, and leaves its address alone', async () => {
    expect(await start('#v=1&gaugeLength=0.5')).toBeUndefined();
    vi.runAllTimers();
    expect(location.hash).toBe('#v=1&gaugeLength=0.5');
    expect(only('[data-link-refused]').hidden).toBe(true);
  });

  it('makes the store of its lesson, at the lesson’s own numbers', async () => {
    putOnPage({ model: stiffSpring, figures: {} });
    const store = await start();
    expect(store?.model.name).toBe('stiff-spring');
    expect(store?.values.value['gaugeLength']).toBe(0.3);
    expect(only('[data-link-refused]').hidden).toBe(true);
  });

  it('takes what a link has set, and tells what of it could not be used', async () => {
    putOnPage({ model: stiffSpring, figures: {} });
    const store = await start('#v=1&gaugeLength=0.5&colour=red');
    expect(store?.values.value['gaugeLength']).toBe(0.5);
    expect(only('[data-link-refused]').textContent).toContain('colour=red');
  });

  it.each([
    ['', 0.5],
    ['#v=1&stretch=0.0002', 0.3],
    ['#v=1&gaugeLength=9', 0.5],
    ['#v=7&gaugeLength=0.4', 0.5],
  ])(
    'with inputs of its own starts at them where no link says otherwise: %j',
    async (link, length) => {
      putOnPage({ model: stiffSpring, figures: {} });
      const store = await start(link, `data-start='{"gaugeLength":0.5}'`);
      expect(store?.values.value['gaugeLength']).toBe(length);
    },
  );

  it('tells a fragment that is neither a link nor a place on the page', async () => {
    putOnPage({ model: stiffSpring, figures: {} });
    await start('#x=1&gaugeLength=0.5');
    expect(only('[data-link-refused]').textContent).toContain('x=1&gaugeLength=0.5');
  });
});

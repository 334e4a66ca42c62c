// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openOrClose } from '../../../src/live/sharing/open.ts';
import { embedCode } from '../../../src/live/sharing/shared-figure.ts';
import { type PageStore, setInput } from '../../../src/live/store.ts';
import { only, openPage, textOf } from '../toy-page.ts';

const FIGURE = `
  <h1>The toy</h1>
  <section data-figure="pull">
    <p class="finding">Two strands share it.</p>
    <div data-alone="/embed/toy/pull/"><button aria-expanded="false">Share</button><div id="place"></div></div>
  </section>`;

let store: PageStore;
const copied = vi.fn<(text: string) => Promise<void>>();
const press = (name: string) =>
  [...document.querySelectorAll('button')].find(({ textContent }) => textContent === name)?.click();
const toggle = () =>
  openOrClose(only('[data-figure]'), only('[aria-expanded]'), only('#place'), store);

beforeEach(() => {
  store = openPage(FIGURE, {});
  document.body.dataset['base'] = '/';
  Object.defineProperty(navigator, 'clipboard', {
    value: { writeText: copied },
    configurable: true,
  });
  toggle();
});
afterEach(() => {
  copied.mockReset();
  Reflect.deleteProperty(navigator, 'clipboard');
});

describe('the panel', () => {
  it('copies the page as it stands when it is pressed, and says so', async () => {
    copied.mockResolvedValue();
    setInput(store, 'pull', 300);
    press('Copy link');
    await vi.waitFor(() => expect(textOf('[role="status"]')).toMatch(/^The link is copied\./));
    expect(copied).toHaveBeenCalledExactlyOnceWith(
      `${location.origin}${location.pathname}#v=1&pull=300`,
    );
  });

  it.each([
    ['refuses to copy', () => copied.mockRejectedValue(new DOMException('denied'))],
    ['has no clipboard at all', () => Reflect.deleteProperty(navigator, 'clipboard')],
  ])('shows the link where the browser %s', async (_, prepare) => {
    prepare();
    press('Copy link');
    const shown = `${location.origin}${location.pathname}`;
    await vi.waitFor(() => expect(only<HTMLTextAreaElement>('textarea').value).toBe(shown));
    expect(textOf('[role="status"]')).toBe('Mark it and copy it from here:');
  });

  it('gives code for a page of one’s own, with the numbers as they stand', async () => {
    copied.mockResolvedValue();
    setInput(store, 'pull', 300);
    press('Code for a web page');
    await vi.waitFor(() => expect(copied).toHaveBeenCalledOnce());
    expect(copied.mock.lastCall?.[0]).toContain(
      `<iframe src="${location.origin}/embed/toy/pull/#v=1&amp;pull=300" title="The toy"`,
    );
  });

  it('draws the link as a code for a camera', async () => {
    press('Code for a camera');
    await vi.waitFor(() => expect(only('.matrix-code path').getAttribute('d')).toMatch(/^M4 4h7/));
  });

  it('offers no picture of what is no drawing', () =>
    expect(document.body.textContent).not.toContain('Picture'));

  it('goes with the second press', () => {
    toggle();
    expect(only('#place').innerHTML).toBe('');
    expect(only('[aria-expanded]').getAttribute('aria-expanded')).toBe('false');
  });
});

describe('the code for a page of one’s own', () => {
  it('lets nothing of an address or a title out of its quotes', () => {
    const code = embedCode('https://a.test/"><b>', 'https://a.test/embed.js', 'a "b" <c> & d');
    expect(code).not.toMatch(/<b>|<c>|title="a "/);
    const frame = new DOMParser().parseFromString(code, 'text/html').querySelector('iframe');
    expect(frame?.getAttribute('src')).toBe('https://a.test/"><b>');
    expect(frame?.title).toBe('a "b" <c> & d');
  });
});

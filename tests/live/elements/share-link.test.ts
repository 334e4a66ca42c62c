// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { ShareLink } from '../../../src/live/elements/share-link.ts';
import { type PageStore, setInput } from '../../../src/live/store.ts';
import { only, openPage, textOf } from '../toy-page.ts';

const SHARE = `
  <share-link>
    <button data-action="copy">Copy</button>
    <button data-action="reset">Start again</button>
    <span role="status"></span>
  </share-link>`;

let store: PageStore;
const copied = vi.fn<(text: string) => Promise<void>>();

beforeEach(() => {
  store = openPage(SHARE, { 'share-link': ShareLink });
  Object.defineProperty(navigator, 'clipboard', {
    value: { writeText: copied },
    configurable: true,
  });
});
afterEach(() => {
  copied.mockReset();
  Reflect.deleteProperty(navigator, 'clipboard');
});

describe('sharing', () => {
  it('copies the page as it stands, and says so', async () => {
    copied.mockResolvedValue();
    setInput(store, 'pull', 300);
    only('[data-action="copy"]').click();
    await vi.waitFor(() => expect(textOf('[role="status"]')).toMatch(/^The link is copied\./));
    expect(copied).toHaveBeenCalledExactlyOnceWith(
      `${location.origin}${location.pathname}#v=1&pull=300`,
    );
  });

  it('shows the link where the browser does not let it be copied', async () => {
    copied.mockRejectedValue(new DOMException('denied', 'NotAllowedError'));
    only('[data-action="copy"]').click();
    const shown = `Copy it from here: ${location.origin}${location.pathname}`;
    await vi.waitFor(() => expect(textOf('[role="status"]')).toBe(shown));
  });

  it('shows the link where the page has no clipboard at all', async () => {
    Reflect.deleteProperty(navigator, 'clipboard');
    only('[data-action="copy"]').click();
    const shown = `Copy it from here: ${location.origin}${location.pathname}`;
    await vi.waitFor(() => expect(textOf('[role="status"]')).toBe(shown));
  });
});

describe('starting again', () => {
  it('puts the inputs back and says so', () => {
    setInput(store, 'pull', 300);
    only('[data-action="reset"]').click();
    expect(store.values.value['pull']).toBe(100);
    expect(textOf('[role="status"]')).toMatch(/^Back to the numbers/);
  });
});

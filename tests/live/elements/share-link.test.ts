// @vitest-environment jsdom
import { beforeEach, describe, expect, it } from 'vitest';
import { ShareLink } from '../../../src/live/elements/share-link.ts';
import { type PageStore, setInput } from '../../../src/live/store.ts';
import { only, openPage, textOf } from '../toy-page.ts';

const SHARE = `
  <share-link>
    <form><button type="submit">Start again</button></form>
    <span role="status"></span>
  </share-link>`;

let store: PageStore;

beforeEach(() => {
  store = openPage(SHARE, { 'share-link': ShareLink });
});

describe('starting again', () => {
  it('puts the inputs back and says so', () => {
    setInput(store, 'pull', 300);
    only('button').click();
    expect(store.values.value['pull']).toBe(100);
    expect(textOf('[role="status"]')).toMatch(/^Back to the numbers/);
  });
});

// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { OnwardLink } from '../../../src/live/elements/onward-link.ts';
import { setInput } from '../../../src/live/store.ts';
import { only, openPage } from '../toy-page.ts';

const LINK = '<a href="/lessons/toy/#v=1&pull=240">Open the lesson</a>';
const open = (inside: string) =>
  openPage(`<onward-link>${inside}</onward-link>`, { 'onward-link': OnwardLink });

describe('the way on', () => {
  it.each(['pointerdown', 'focus', 'click'])('takes along what stands there at %s', (touch) => {
    const store = open(LINK);
    setInput(store, 'pull', 500);
    only('a').dispatchEvent(new Event(touch));
    const { pathname, hash } = new URL((only('a') as HTMLAnchorElement).href);
    expect([pathname, hash]).toEqual(['/lessons/toy/', '#v=1&pull=500']);
  });

  it('keeps its address until it is touched', () => {
    setInput(open(LINK), 'pull', 500);
    expect(only('a').getAttribute('href')).toBe('/lessons/toy/#v=1&pull=240');
  });

  it('is none where there is no link', () => expect(() => open('words')).not.toThrow());
});

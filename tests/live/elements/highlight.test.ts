// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { bindHighlight } from '../../../src/live/elements/highlight.ts';
import { only, startAfresh } from '../toy-page.ts';

const PAGE = `
  <p><span id="word" data-sym="pull">pull <b id="inside">100 N</b></span> and <span id="other" data-sym="strand">T</span></p>
  <div id="control" data-sym="pull"><input /></div>
  <p id="plain">Nothing to light.</p>`;

const lit = () => [...document.querySelectorAll('.lit')].map(({ id }) => id);
const touch = (selector: string, type: string) =>
  only(selector).dispatchEvent(new Event(type, { bubbles: true }));

const added: [string, EventListenerOrEventListenerObject][] = [];

beforeEach(() => {
  startAfresh();
  document.body.innerHTML = PAGE;
  const add = document.addEventListener.bind(document);
  vi.spyOn(document, 'addEventListener').mockImplementation((type, listener) => {
    added.push([type, listener]);
    add(type, listener);
  });
  bindHighlight();
});
afterEach(() => {
  for (const [type, listener] of added.splice(0)) document.removeEventListener(type, listener);
  vi.restoreAllMocks();
});

describe('a quantity that is touched', () => {
  it.each(['pointerover', 'pointerdown', 'focusin'])(
    'lights everywhere it stands, and no other does (%s)',
    (type) => {
      touch('#word', type);
      expect(lit()).toEqual(['word', 'control']);
    },
  );

  it('is known from any part of it', () => {
    touch('#inside', 'pointerover');
    expect(lit()).toEqual(['word', 'control']);
    touch('input', 'focusin');
    expect(lit()).toEqual(['word', 'control']);
  });

  it('hands the light on, and puts it out over plain text', () => {
    touch('#word', 'pointerover');
    touch('#other', 'pointerover');
    expect(lit()).toEqual(['other']);
    touch('#plain', 'pointerover');
    expect(lit()).toEqual([]);
  });
});

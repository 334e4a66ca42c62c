// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { keepLink, pageAddress } from '../../src/live/link-keeper.ts';
import { createPageStore, type PageStore, setInput } from '../../src/live/store.ts';
import { ONE_STRAND, only, startAfresh, TWO_STRANDS, toy } from './toy-page.ts';

const REFUSED = '<p data-link-refused hidden></p>';

const kept: PageStore[] = [];

/** A page that keeps its link. */
function keep(refused: readonly string[] = []): PageStore {
  const store = createPageStore(toy, {});
  keepLink(store, refused);
  kept.push(store);
  return store;
}

/** Follows a link of this page: the address changes, then the page hears of it. */
function follow(fragment: string): void {
  history.replaceState(null, '', fragment);
  dispatchEvent(new Event('hashchange'));
}

const listening: [string, EventListenerOrEventListenerObject][] = [];

beforeEach(() => {
  startAfresh();
  document.body.innerHTML = REFUSED;
  vi.useFakeTimers();
  const add = window.addEventListener.bind(window);
  vi.spyOn(window, 'addEventListener').mockImplementation((type, listener, options) => {
    listening.push([type, listener]);
    add(type, listener, options);
  });
});

/** A page goes on until it is left; here it lets go of its address, and stays where it is in other units. */
afterEach(() => {
  for (const store of kept.splice(0)) setInput(store, 'pull', 999);
  vi.runAllTimers();
  for (const [type, listener] of listening.splice(0)) removeEventListener(type, listener);
  vi.restoreAllMocks();
  vi.useRealTimers();
});

describe('the address', () => {
  it('is written once the inputs rest, and not before', () => {
    const store = keep();
    setInput(store, 'pull', 300);
    vi.advanceTimersByTime(149);
    expect(location.hash).toBe('');
    setInput(store, 'pull', 310);
    vi.advanceTimersByTime(149);
    expect(location.hash).toBe('');
    vi.advanceTimersByTime(1);
    expect(location.hash).toBe('#v=1&pull=310');
  });

  it('is written over, so that “back” leads off the page and not through a slider’s ticks', () => {
    const store = keep();
    const entries = history.length;
    for (const pull of [300, 310, 320]) {
      setInput(store, 'pull', pull);
      vi.advanceTimersByTime(200);
    }
    expect(location.hash).toBe('#v=1&pull=320');
    expect(history.length).toBe(entries);
  });

  it('loses its fragment where all stands at the start again', () => {
    const store = keep();
    setInput(store, 'pull', 300);
    vi.advanceTimersByTime(200);
    setInput(store, 'pull', 100);
    vi.advanceTimersByTime(200);
    expect(location.href).not.toContain('#');
  });

  it('keeps an anchor that the reader followed until something differs', () => {
    history.replaceState(null, '', '#in-numbers');
    const store = keep();
    setInput(store, 'pull', 300);
    setInput(store, 'pull', 100);
    vi.advanceTimersByTime(200);
    expect(location.hash).toBe('#in-numbers');
    setInput(store, 'pull', 300);
    vi.advanceTimersByTime(200);
    expect(location.hash).toBe('#v=1&pull=300');
  });

  it('is not touched by opening the page', () => {
    const write = vi.spyOn(history, 'replaceState');
    keep();
    vi.advanceTimersByTime(1000);
    expect(write).not.toHaveBeenCalled();
  });

  it('to copy is whole and of now, without waiting for rest', () => {
    const store = keep();
    expect(pageAddress(store)).toBe(location.origin + location.pathname);
    setInput(store, 'strands', ONE_STRAND);
    expect(pageAddress(store)).toBe(
      `${location.origin}${location.pathname}#v=1&strands=${ONE_STRAND}`,
    );
  });
});

describe('the address of a page that starts at inputs of its own', () => {
  it('is bare where nothing was moved; for another page it names them', () => {
    const store = createPageStore(toy, {}, { pull: 240 });
    expect(pageAddress(store)).toBe(location.origin + location.pathname);
    expect(pageAddress(store, '/other/')).toBe(`${location.origin}/other/#v=1&pull=240`);
    setInput(store, 'pull', 100);
    expect(pageAddress(store)).toBe(`${location.origin}${location.pathname}#v=1&pull=100`);
    expect(pageAddress(store, '/other/')).toBe(`${location.origin}/other/`);
  });
});

describe('a link typed into the address', () => {
  it('sets its inputs, and puts those that it does not name back to the start', () => {
    const store = keep();
    setInput(store, 'strands', ONE_STRAND);
    follow('#v=1&pull=250');
    expect(store.values.value).toEqual({ pull: 250, strands: TWO_STRANDS, strand: 125 });
    expect(only('[data-link-refused]').hidden).toBe(true);
  });

  it('changes nothing where it is an ordinary anchor', () => {
    const store = keep(['colour=red']);
    setInput(store, 'pull', 300);
    follow('#in-numbers');
    expect(store.values.value['pull']).toBe(300);
    expect(only('[data-link-refused]').hidden).toBe(false);
  });

  it('tells what it could not use, and uses the rest', () => {
    const store = keep();
    follow('#v=1&pull=250&colour=red&strands=7');
    expect(store.values.value['pull']).toBe(250);
    expect(only('[data-link-refused]').hidden).toBe(false);
    expect(only('[data-link-refused]').textContent).toBe(
      'Part of the link could not be used and was left out: colour=red, strands=7.',
    );
    follow('#v=1&pull=260');
    expect(only('[data-link-refused]').hidden).toBe(true);
    expect(only('[data-link-refused]').textContent).toBe('');
  });
});

describe('what of a link was refused', () => {
  it('is told when the page opens, as text and never as a part of the page', () => {
    keep(['x=<b>bold</b>']);
    const place = only('[data-link-refused]');
    expect(place.hidden).toBe(false);
    expect(place.textContent).toContain('x=<b>bold</b>');
    expect(place.children).toHaveLength(0);
  });

  it('is cut where it is longer than a sentence', () => {
    keep([`x=${'y'.repeat(5000)}`]);
    expect(only('[data-link-refused]').textContent?.length).toBeLessThan(270);
  });

  it('has no place on some pages, which open all the same', () => {
    document.body.innerHTML = '';
    expect(() => keep(['colour=red'])).not.toThrow();
  });
});

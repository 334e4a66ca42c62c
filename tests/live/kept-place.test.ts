// @vitest-environment jsdom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { forgetPlace, keepPlace, keptPlace } from '../../src/live/kept-place.ts';

afterEach(() => {
  vi.restoreAllMocks();
  localStorage.clear();
  document.body.innerHTML = '';
});

/** The reader puts the page away, with one heading passed and one still below. */
function leave(): void {
  document.body.innerHTML =
    '<div class="prose"><h2 id="play">Play</h2><h2 id="later">Later</h2></div>';
  const below = document.querySelector('#later') as HTMLElement;
  vi.spyOn(below, 'getBoundingClientRect').mockReturnValue(new DOMRect(0, 5000, 0, 0));
  vi.spyOn(window, 'scrollY', 'get').mockReturnValue(900);
  vi.spyOn(document, 'visibilityState', 'get').mockReturnValue('hidden');
  document.dispatchEvent(new Event('visibilitychange'));
}

describe('the place where the reader left off', () => {
  it('is none before a lesson was opened', () => expect(keptPlace()).toBeUndefined());

  it('is the last lesson opened, among all that were, each once', () => {
    for (const lesson of ['one', 'two', 'one']) keepPlace(lesson);
    expect(keptPlace()).toEqual({ last: 'one', heading: undefined, opened: ['one', 'two'] });
  });

  it('is the heading that was passed when the page was left', () => {
    keepPlace('three');
    leave();
    expect(keptPlace()?.heading).toBe('play');
  });

  it('is none where a worked example was opened', () => {
    document.body.innerHTML = '<article data-start="{}"></article>';
    keepPlace('one');
    expect(keptPlace()).toBeUndefined();
  });

  it('is forgotten when told to', () => {
    keepPlace('one');
    forgetPlace();
    expect(keptPlace()).toBeUndefined();
    expect(localStorage.length).toBe(0);
  });

  it.each([
    'no json',
    '{}',
    'null',
    '{"last":"../elsewhere","opened":[]}',
    '{"last":"one","opened":"one"}',
  ])('is none where %s is kept', (text) => {
    localStorage.setItem('lessons', text);
    expect(keptPlace()).toBeUndefined();
  });

  it('leaves out names that are none', () => {
    const kept = { last: 'one', heading: '<b>', opened: ['one', 7, 'A b'] };
    localStorage.setItem('lessons', JSON.stringify(kept));
    expect(keptPlace()).toEqual({ last: 'one', heading: undefined, opened: ['one'] });
  });

  it('is none where the browser forbids to keep anything', () => {
    const forbid = () => {
      throw new DOMException('forbidden', 'SecurityError');
    };
    for (const method of ['getItem', 'setItem', 'removeItem'] as const) {
      vi.spyOn(Storage.prototype, method).mockImplementation(forbid);
    }
    expect(() => {
      keepPlace('one');
      forgetPlace();
    }).not.toThrow();
    expect(keptPlace()).toBeUndefined();
  });
});

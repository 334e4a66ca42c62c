// @vitest-environment jsdom
/** What follows a slider on every tick, and what waits until it rests: on a screen that all but `.far` elements are near. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { stiffSpring } from '../../src/lessons/stiff-spring/model.ts';
import { provideStore } from '../../src/live/elements/store-element.ts';
import { LiveValue } from '../../src/live/elements/value.ts';
import { createPageStore, type PageStore, setInput } from '../../src/live/store.ts';
import { unitSystem } from '../../src/live/unit-system.ts';

const screen = vi.hoisted(() => {
  const watched = new Set<Element>();
  class Watcher {
    private readonly tell: (entries: readonly unknown[]) => void;
    constructor(tell: Watcher['tell']) {
      this.tell = tell;
    }
    observe(target: Element): void {
      watched.add(target);
      this.tell([{ target, isIntersecting: !target.classList.contains('far') }]);
    }
    unobserve(target: Element): void {
      watched.delete(target);
    }
  }
  Object.assign(globalThis, { IntersectionObserver: Watcher });
  return watched;
});

if (!customElements.get('live-value')) customElements.define('live-value', LiveValue);

let store: PageStore;

/** Writes a number on the page; reads it as it stands in metric units. */
function written(place: 'near' | 'far'): () => string | undefined {
  document.body.innerHTML = `<live-value class="${place}" data-name="gaugeLength"><span class="q-metric"></span></live-value>`;
  return () => document.querySelector('.q-metric')?.textContent?.replace(/\s/g, ' ');
}

beforeEach(() => {
  vi.useFakeTimers();
  unitSystem.value = 'metric';
  store = createPageStore(stiffSpring, {});
  provideStore(store);
});

afterEach(() => {
  document.body.innerHTML = '';
  vi.runAllTimers();
  vi.useRealTimers();
});

describe('settled values', () => {
  it('follow once nothing has moved for 150 ms', () => {
    const both = () => [store.values, store.settled].map(({ value }) => value['gaugeLength']);
    setInput(store, 'gaugeLength', 0.4);
    vi.advanceTimersByTime(149);
    setInput(store, 'gaugeLength', 0.5);
    vi.advanceTimersByTime(149);
    expect(both()).toEqual([0.5, 0.3]);
    vi.advanceTimersByTime(1);
    expect(both()).toEqual([0.5, 0.5]);
  });
});

describe('a number in the text', () => {
  it('near the screen follows at once', () => {
    const text = written('near');
    setInput(store, 'gaugeLength', 0.5);
    expect(text()).toBe('500 mm');
  });

  it('far from the screen follows once the slider rests', () => {
    const text = written('far');
    setInput(store, 'gaugeLength', 0.5);
    expect(text()).toBe('300 mm');
    vi.advanceTimersByTime(150);
    expect(text()).toBe('500 mm');
  });

  it('is watched until it leaves the page', () => {
    written('near');
    expect(screen.size).toBe(1);
    document.body.innerHTML = '';
    expect(screen.size).toBe(0);
  });
});

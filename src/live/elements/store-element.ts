/** The base of the live elements: one page store for all, effects disposed when the element leaves. */
import { computed, effect, type ReadonlySignal } from '@preact/signals-core';
import type { Values } from '../../models/define-model.ts';
import type { PageStore } from '../store.ts';
import { nearScreen, onScreen } from './near-screen.ts';

let provided: PageStore | undefined;

/** Hands the page's store to every element; call before they are defined. */
export function provideStore(store: PageStore): void {
  provided = store;
}

/** An element that binds what the build wrote to the page's store. */
export abstract class StoreElement extends HTMLElement {
  private readonly disposers: (() => void)[] = [];
  private listening = new AbortController();

  /** Called once per connection, with the store there. */
  protected abstract bind(store: PageStore): void;

  connectedCallback(): void {
    if (provided) this.bind(provided);
  }

  disconnectedCallback(): void {
    for (const dispose of this.disposers.splice(0)) dispose();
    this.listening.abort();
    this.listening = new AbortController();
  }

  /** Runs when the element leaves. */
  onRelease(action: () => void): void {
    this.disposers.push(action);
  }

  /** Whether the element is near the screen, followed until it leaves. */
  near(): ReadonlySignal<boolean> {
    this.onRelease(() => nearScreen.leave(this));
    return nearScreen.of(this);
  }

  /** The page's values as they change: on every tick on the screen, elsewhere once they rest. */
  valuesOf(store: PageStore): ReadonlySignal<Values> {
    const isSeen = onScreen.of(this);
    this.onRelease(() => onScreen.leave(this));
    return computed(() => (isSeen.value ? store.values.value : store.settled.value));
  }

  /** Runs with the page's values now and as they change. */
  followValues(store: PageStore, show: (values: Values) => void): void {
    const values = this.valuesOf(store);
    this.follow(() => show(values.value));
  }

  /** Runs now and whenever a signal that it read changes. */
  follow(action: () => void): void {
    this.onRelease(effect(action));
  }

  /** Listens until the element leaves. */
  listen<K extends keyof HTMLElementEventMap>(
    target: EventTarget,
    type: K,
    listener: (event: HTMLElementEventMap[K]) => void,
  ): void {
    target.addEventListener(type, listener as EventListener, { signal: this.listening.signal });
  }
}

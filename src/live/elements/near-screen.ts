/** Which elements are on the screen or near it: only those need to follow every tick of a slider. */
import { type ReadonlySignal, type Signal, signal } from '@preact/signals-core';

const NEAR = '200px';

const watched = new WeakMap<Element, Signal<boolean>>();

let watcher: IntersectionObserver | undefined;

function tell(entries: readonly IntersectionObserverEntry[]): void {
  for (const { target, isIntersecting } of entries) {
    const near = watched.get(target);
    if (near) near.value = isIntersecting;
  }
}

/** One watcher for all elements, from the first one on; undefined where nothing can tell. */
function theWatcher(): IntersectionObserver | undefined {
  if (!('IntersectionObserver' in globalThis)) return undefined;
  watcher ??= new IntersectionObserver(tell, { rootMargin: NEAR });
  return watcher;
}

/** Whether an element is near the screen; where nothing can tell, everything is. */
export function nearScreen(element: Element): ReadonlySignal<boolean> {
  const near = watched.get(element) ?? signal(theWatcher() === undefined);
  watched.set(element, near);
  theWatcher()?.observe(element);
  return near;
}

/** Stops watching an element that leaves the page. */
export function leaveScreen(element: Element): void {
  theWatcher()?.unobserve(element);
}

/** Which elements are on the screen or near it: only those need to follow every tick of a slider. */
import { type ReadonlySignal, type Signal, signal } from '@preact/signals-core';

const NEAR = '200px';

const watched = new WeakMap<Element, Signal<boolean>>();

/** One watcher for all elements. */
const watcher =
  'IntersectionObserver' in globalThis
    ? new IntersectionObserver(
        (entries) => {
          for (const { target, isIntersecting } of entries) {
            const near = watched.get(target);
            if (near) near.value = isIntersecting;
          }
        },
        { rootMargin: NEAR },
      )
    : undefined;

/** Whether an element is near the screen; where nothing can tell, everything is. */
export function nearScreen(element: Element): ReadonlySignal<boolean> {
  const near = watched.get(element) ?? signal(watcher === undefined);
  watched.set(element, near);
  watcher?.observe(element);
  return near;
}

/** Stops watching an element that leaves the page. */
export function leaveScreen(element: Element): void {
  watcher?.unobserve(element);
}

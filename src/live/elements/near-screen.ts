/** Which elements are on the screen, and which near it: only what is seen needs to follow every tick of a slider. */
import { type ReadonlySignal, type Signal, signal } from '@preact/signals-core';

/** Tells of elements whether they are within some distance of the screen; where nothing can tell, all are. */
function watch(rootMargin: string) {
  const watched = new WeakMap<Element, Signal<boolean>>();
  let watcher: IntersectionObserver | undefined;
  const tell = (entries: readonly IntersectionObserverEntry[]) => {
    for (const { target, isIntersecting } of entries) {
      const within = watched.get(target);
      if (within) within.value = isIntersecting;
    }
  };
  return {
    of(element: Element): ReadonlySignal<boolean> {
      if ('IntersectionObserver' in globalThis)
        watcher ??= new IntersectionObserver(tell, { rootMargin });
      const within = watched.get(element) ?? signal(!watcher);
      watched.set(element, within);
      watcher?.observe(element);
      return within;
    },
    leave: (element: Element) => watcher?.unobserve(element),
  };
}

/** What will soon be seen. */
export const nearScreen = watch('200px');

/** What is seen. */
export const onScreen = watch('0px');

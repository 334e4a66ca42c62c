/** Parts of the sheet that are fetched when they are first wanted. */
import { signal } from '@preact/signals-core';
import type { ComponentType, JSX } from 'preact';
import { NOTICES } from '../words/notices.ts';
import { part } from './part.tsx';

/** A component that is fetched when it is first drawn. */
export interface Late<Props> {
  (props: Props): JSX.Element;
  /** Fetches it before it is drawn: paper cannot wait. */
  readonly fetch: () => Promise<void>;
  /** Is given it by the build, which draws everything at once. */
  readonly preset: (component: ComponentType<Props>) => void;
}

/** A component of a module, by its name, fetched when it is first drawn; until it is there, `place` keeps its place. */
export function late<Name extends string, Props extends object>(
  load: () => Promise<Readonly<Record<Name, ComponentType<Props>>>>,
  name: Name,
  place: JSX.Element | null = null,
): Late<Props> {
  const found = signal<ComponentType<Props> | 'asked' | 'failed' | undefined>(undefined);
  const set = (value: ComponentType<Props> | 'asked' | 'failed') => {
    found.value = value;
  };
  let arrival: Promise<void> | undefined;
  const fetch = () => {
    if (found.peek() === undefined) set('asked');
    arrival ??= load().then(
      (loaded) => set(loaded[name]),
      () => set('failed'),
    );
    return arrival;
  };
  const Place = part<Props>((props) => {
    const Component = found.value;
    if (Component === 'failed') return <p class="refusal">{NOTICES.notArrived}</p>;
    if (Component === undefined) queueMicrotask(fetch);
    return Component === undefined || Component === 'asked' ? place : <Component {...props} />;
  });
  return Object.assign(Place, { fetch, preset: set });
}

/** Parts of the sheet that are fetched when they are first wanted. */
import { signal } from '@preact/signals-core';
import type { ComponentType, JSX } from 'preact';
import { NOTICES } from '../words/notices.ts';
import { part } from './part.tsx';

/** A component that is fetched when it is first drawn; until it is there, `place` keeps its place. */
export function late<Props extends object>(
  fetch: () => Promise<ComponentType<Props>>,
  place: JSX.Element | null = null,
): (props: Props) => JSX.Element {
  const found = signal<ComponentType<Props> | 'asked' | 'failed' | undefined>(undefined);
  const ask = () => {
    found.value = 'asked';
    fetch().then(
      (component) => {
        found.value = component;
      },
      () => {
        found.value = 'failed';
      },
    );
  };
  return part<Props>((props) => {
    const Component = found.value;
    if (Component === 'failed') return <p class="refusal">{NOTICES.notArrived}</p>;
    if (Component === undefined) queueMicrotask(ask);
    return Component === undefined || Component === 'asked' ? place : <Component {...props} />;
  });
}

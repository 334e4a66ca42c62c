/**
 * The card's place on the page: drawn while its fold is open, with the code of the link as it stands, and printed once
 * the code is there.
 */
import { effect, type ReadonlySignal, signal } from '@preact/signals-core';
import { h, render } from 'preact';
import { SheetGiven } from '../kit/part.tsx';
import type { Project } from '../state/project.ts';
import type { SheetView } from '../state/view.ts';
import { Card } from './Card.tsx';
import { type CodeState, codeOf } from './code.ts';

const REST = 300; // ms without a change

/** What the place needs of the page. */
export interface CardSource {
  readonly view: SheetView;
  readonly project: ReadonlySignal<Project>;
  readonly link: () => Promise<string | undefined>;
}

/** The newest code, which an older one that comes late does not replace. */
function codeKeeper({ project, link }: CardSource, isOpen: ReadonlySignal<boolean>) {
  const code = signal<CodeState>(undefined);
  let newest: Promise<void> = Promise.resolve();
  const renew = (): Promise<void> => {
    const mine = link()
      .then(codeOf)
      .then((found) => {
        if (newest === mine) code.value = found;
      });
    newest = mine;
    return mine;
  };
  effect(() => {
    project.value;
    if (!isOpen.value) return undefined;
    code.value = undefined;
    const rest = setTimeout(() => void renew(), REST);
    return () => clearTimeout(rest);
  });
  return { code, renew };
}

/** Brings the card to life in its fold; what comes back opens it and waits until it is whole. */
export function bindCard(
  fold: HTMLDetailsElement,
  place: HTMLElement,
  source: CardSource,
): () => Promise<void> {
  const isOpen = signal(fold.open);
  fold.addEventListener('toggle', () => {
    isOpen.value = fold.open;
  });
  const { code, renew } = codeKeeper(source, isOpen);
  effect(() => {
    const card = isOpen.value ? h(Card, { code }) : null;
    render(h(SheetGiven, { value: source.view }, card), place);
  });
  return async () => {
    fold.open = true;
    isOpen.value = true;
    await renew();
  };
}

/** The card as it is drawn while its fold is open, with the code of the link as it stands. Fetched when it is opened. */
import { effect, type ReadonlySignal, signal } from '@preact/signals-core';
import { h, render } from 'preact';
import { type CodeState, codeOf } from '../../live/sharing/code.ts';
import { SheetGiven } from '../kit/part.tsx';
import type { Project } from '../state/project.ts';
import type { SheetView } from '../state/view.ts';
import { Card } from './Card.tsx';

const REST = 300; // ms without a change

/** What the card is drawn from. */
export interface CardSource {
  readonly view: SheetView;
  readonly project: ReadonlySignal<Project>;
  readonly link: () => Promise<string | undefined>;
}

/** The code of the sheet as it stands: one of an older sheet is taken off at once, and none that comes late is shown. */
function codeKeeper({ project, link }: CardSource, isOpen: ReadonlySignal<boolean>) {
  const code = signal<CodeState>(undefined);
  let newest: symbol | undefined;
  const renew = async (): Promise<void> => {
    const mine = Symbol('code');
    newest = mine;
    const found = await codeOf(await link());
    if (newest === mine) code.value = found;
  };
  effect(() => {
    project.value;
    code.value = undefined;
    newest = undefined;
    if (!isOpen.value) return undefined;
    const rest = setTimeout(() => void renew(), REST);
    return () => clearTimeout(rest);
  });
  return { code, renew };
}

/** Draws the card in its place for as long as it is open; what comes back waits until its code is there too. */
export function drawCard(
  place: HTMLElement,
  source: CardSource,
  isOpen: ReadonlySignal<boolean>,
): () => Promise<void> {
  const { code, renew } = codeKeeper(source, isOpen);
  place.replaceChildren();
  effect(() => {
    const card = isOpen.value ? h(Card, { code }) : null;
    render(h(SheetGiven, { value: source.view }, card), place);
  });
  return renew;
}

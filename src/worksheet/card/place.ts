/** The card's place on the page: a fold, whose contents are fetched when it is opened or printed. */
import { signal } from '@preact/signals-core';
import { NOTICES } from '../words/notices.ts';
import type { CardSource } from './drawing.ts';

/** Brings the fold to life; what comes back opens it, and says whether the card is whole and can be printed. */
export function bindCard(
  fold: HTMLDetailsElement,
  place: HTMLElement,
  source: CardSource,
): () => Promise<boolean> {
  const isOpen = signal(fold.open);
  let drawn: Promise<() => Promise<void>> | undefined;
  const whole = async (): Promise<boolean> => {
    isOpen.value = true;
    drawn ??= import('./drawing.ts').then(({ drawCard }) => drawCard(place, source, isOpen));
    const codeIsThere = await drawn.catch(() => undefined);
    if (codeIsThere === undefined) {
      drawn = undefined; // asked for again the next time
      place.textContent = NOTICES.notArrived;
      return false;
    }
    await codeIsThere();
    return true;
  };
  fold.addEventListener('toggle', () => {
    isOpen.value = fold.open;
    if (fold.open) void whole();
  });
  return () => {
    fold.open = true;
    return whole();
  };
}

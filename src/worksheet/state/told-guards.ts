/** What the core wants told, in words that are fetched with the first of it; where they do not arrive, that is said. */
import { signal } from '@preact/signals-core';
import type { WorksheetGuard } from '../../core/worksheet.ts';
import { NOTICES } from '../words/notices.ts';
import type { Shown } from './shown.ts';

type Say = (guard: WorksheetGuard, shown: Shown, bandNames?: readonly string[]) => string;

const words = signal<Say | undefined>(undefined);

/** A guard and its sentence. */
export interface Told {
  readonly guard: WorksheetGuard;
  readonly sentence: string;
}

let coming: Promise<void> | undefined;

/** Fetches the words, once. */
export function fetchGuardWords(): Promise<void> {
  coming ??= import('../words/guard-words.ts').then(
    ({ guardSentence }) => {
      words.value = guardSentence;
    },
    () => {
      words.value = () => NOTICES.notArrived;
    },
  );
  return coming;
}

/** The sentences of guards; none until the words are there, and whoever asked is asked again then. */
export function toldGuards(
  guards: readonly WorksheetGuard[],
  shown: Shown,
  bandNames?: readonly string[],
): readonly Told[] {
  const say = words.value;
  if (!say && guards.length > 0) void fetchGuardWords();
  return say ? guards.map((guard) => ({ guard, sentence: say(guard, shown, bandNames) })) : [];
}

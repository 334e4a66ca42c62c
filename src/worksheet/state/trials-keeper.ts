/**
 * Asks the worker for the interval by trials after half a second's rest, one sheet at a time. Where no worker starts,
 * there is no such interval, and the one to first order stands.
 */
import { effect, type ReadonlySignal, signal } from '@preact/signals-core';
import type { Outcome, StressTrials } from '../../core/worksheet.ts';
import type { SheetStore } from './store.ts';

const REST = 500; // ms without a change

interface Answer {
  readonly ticket: number;
  readonly trials: Outcome<StressTrials>;
}

function startWorker(): Worker | undefined {
  try {
    return new Worker(new URL('./trials-worker.ts', import.meta.url), { type: 'module' });
  } catch {
    return undefined;
  }
}

/** The trials of the sheet as it stands; undefined until they are there. */
export function keepTrials({
  read,
  results,
}: SheetStore): ReadonlySignal<StressTrials | undefined> {
  const found = signal<StressTrials | undefined>(undefined);
  let worker: Worker | undefined;
  let ticket = 0;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const ask = () => {
    worker ??= startWorker();
    if (!worker) return;
    worker.onmessage = ({ data }: MessageEvent<Answer>) => {
      if (data.ticket === ticket && data.trials.ready) found.value = data.trials;
    };
    worker.onerror = () => worker?.terminate();
    worker.postMessage({ ticket, worksheet: read.peek().worksheet });
  };
  effect(() => {
    const isMeasured = results.value.measured.ready;
    ticket += 1;
    clearTimeout(waiting);
    found.value = undefined;
    if (isMeasured) waiting = setTimeout(ask, REST);
  });
  return found;
}

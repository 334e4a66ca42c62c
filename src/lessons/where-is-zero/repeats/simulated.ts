/**
 * The repeats that there are so far: the first lot comes with the page, others are simulated a few in each frame once
 * they have been asked for, so that nothing freezes. Where nothing is painted nothing is simulated.
 * Units: m.
 * Source: definition.
 */
import { signal } from '@preact/signals-core';
import { LOT } from '../taking.ts';
import { first } from './first.worked.ts';
import { joined, type Tally, tallyOf } from './tally.ts';

const AT_ONCE = 10; // ms of a frame

const lots = signal<readonly Tally[]>([first]);
let wanted = 1;
let isRunning = false;

const nextFrame = () => new Promise((resolve) => requestAnimationFrame(resolve));

/** Simulates one lot, and shows it as it grows. */
async function simulateLot(repeatAt: (place: number) => Parameters<typeof tallyOf>[0][number]) {
  const before = lots.peek();
  let lot = tallyOf([]);
  while (lot.repeats < LOT) {
    await nextFrame();
    const end = performance.now() + AT_ONCE;
    while (lot.repeats < LOT && performance.now() < end)
      lot = joined(lot, tallyOf([repeatAt(before.length * LOT + lot.repeats)]));
    lots.value = [...before, lot];
  }
}

async function simulate(): Promise<void> {
  isRunning = true;
  try {
    const { repeatAt } = await import('./repeat.ts');
    while (lots.peek().length < wanted) await simulateLot(repeatAt);
  } finally {
    isRunning = false;
  }
}

/** The count of so many repeats, as far as they have come; those that are missing are asked for. */
export function simulated(repeats: number): Tally {
  const count = Math.max(1, Math.round(repeats / LOT));
  wanted = Math.max(wanted, count);
  const isPainted = 'requestAnimationFrame' in globalThis;
  if (isPainted && !isRunning && lots.peek().length < wanted) simulate().catch(() => {}); // asked for again with the next drawing
  return lots.value.slice(0, count).reduce(joined);
}

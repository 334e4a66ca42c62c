/** What the levels are called, and what is new at each. */
import type { BenchLevel } from '../../core/bench.ts';

/** By their names in a link. */
export const LEVEL_WORDS: Readonly<Record<BenchLevel, readonly [name: string, says: string]>> = {
  clean: ['Clean', 'A mill that behaves. Learn the steps here.'],
  drag: ['No-load torque', 'The screw is stiff, and nobody has tried how stiff.'],
  warming: ['Warm hands', 'Bare hands warm the bar, and it grows.'],
  slipping: ['Slipping clamp', 'A clamp that was set in a hurry may slip.'],
  toe: ['Long straightening', 'This band needs a good part of the load before it is straight.'],
  worn: ['Worn band', 'The band is not what its label says any more.'],
  nasty: ['Everything at once', 'All that can go wrong, on one mill.'],
};

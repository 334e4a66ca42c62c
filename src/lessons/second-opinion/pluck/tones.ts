/**
 * The logarithmic scale of the tones, and how a frequency is written on it.
 * Units: Hz; drawing units otherwise.
 */
import { linearScale, type Scale } from '../../../figures/scale.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { State } from '../state.ts';
import type { PluckLayout } from './layout.ts';

/** Both ends of the scale. */
export const TONES = [20, 2000] as const;

/** From a frequency to its place across the drawing. */
export function toneScale({ axis }: PluckLayout): Scale {
  const across = linearScale([Math.log(TONES[0]), Math.log(TONES[1])], [axis.left, axis.right]);
  return (frequency) => across(Math.log(frequency));
}

/** A frequency with its unit. */
export const hertz = (frequency: number, { system }: State): string =>
  formatQuantity(frequency, 'frequency', system);

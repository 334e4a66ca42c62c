/**
 * The scales of the grip figure.
 * Units: W; drawing units otherwise.
 */
import { linearScale, type Scale } from '../../../figures/scale.ts';
import type { GripLayout } from './layout.ts';

/** How far the plot reaches: in power, and in the slip margin, which begins where the band slips. */
export const MOST_POWER = 60e3;
export const MARGINS = [1, 4] as const;

/** From power and margin to places. */
export function gripScales({ left, right, top, bottom }: GripLayout): { x: Scale; y: Scale } {
  return {
    x: linearScale([0, MOST_POWER], [left, right]),
    y: linearScale(MARGINS, [bottom, top]),
  };
}

/**
 * How long the band would last after one thing is changed, over how long it lasts as it is set: ratios alone.
 * Units: SI; ratios have none.
 * Source: core/wheel (Smith, Watson and Topper; `dowling`, from memory); the exponent is an assumption.
 */
import { swtLifeRatio } from '../../core/wheel.ts';
import { type RunningBand, runningBand, type Setting } from './running-band.ts';

/** What can be changed, one at a time. */
export const CHANGED = ['thickness', 'tension', 'wheelDiameter'] as const;

/** One of them. */
export type Changed = (typeof CHANGED)[number];

const cycleOf = ({ peak, range }: Pick<RunningBand, 'peak' | 'range'>) => ({
  peak,
  amplitude: range / 2,
});

/** Life with one thing larger by a share of itself (smaller, where that is below 0) over life as set. */
export function relativeLife(
  setting: Setting,
  what: Changed,
  change: number,
  exponent: number,
): number {
  const changed = runningBand({ ...setting, [what]: setting[what] * (1 + change) });
  return swtLifeRatio(cycleOf(changed), cycleOf(runningBand(setting)), exponent);
}

/**
 * Rows at which the load rose and the band seems to have grown shorter: a clamp that slipped, a hand on the bar, a digit.
 * Units: SI only (m, N·m).
 * Source: derived here: a toe that dies away with the load can turn the dial back before it first rises, and not after.
 */
import { coverage } from '../../assumptions.ts';
import { fitLine } from '../../line.ts';
import { readLoadDoubt } from '../load.ts';
import type { SeriesResult } from './readings.ts';

/** A row whose stretch is less than that of the row before it, at a higher load. */
export interface DialFall {
  readonly row: number; // place in worksheet.readings
  readonly back: number; // m, by so much less
}

type Judged = Pick<
  SeriesResult,
  'rows' | 'series' | 'torques' | 'elongations' | 'topTorque' | 'repeatability' | 'loadReading'
>;

const leastShare = 1 / 3; // of the top load: from there on no toe is left that turns the dial back

/** Stretch per load of all rows together, m per N·m; 0 where no line can be drawn. */
function slopeOf({ torques, elongations }: Judged): number {
  if (torques.length < 3 || new Set(torques).size < 2) return 0;
  return fitLine(torques, elongations).slope;
}

/** Rows that fall by more than two readings of dial and load differ by chance (95 %); none where the whole series falls. */
export function dialFalls(readings: Judged): readonly DialFall[] {
  const { rows, series, torques, elongations, topTorque, repeatability, loadReading } = readings;
  const slope = slopeOf(readings);
  if (slope <= 0) return [];
  const found: DialFall[] = [];
  let lowest = Number.POSITIVE_INFINITY; // of this series so far
  let hasRisen = false;
  for (const [at, row] of rows.entries()) {
    const [torque, stretch] = [torques[at] as number, elongations[at] as number];
    const [before, last] = [torques[at - 1] ?? torque, elongations[at - 1] ?? stretch];
    const readingDoubt = Math.hypot(repeatability, slope * readLoadDoubt(loadReading, torque));
    const chance = coverage.factor * Math.SQRT2 * readingDoubt;
    if (series[at] !== series[at - 1]) {
      lowest = stretch;
      hasRisen = false;
    } else if (torque > before && last - stretch > chance) {
      if (hasRisen || before > leastShare * topTorque) found.push({ row, back: last - stretch });
    }
    lowest = Math.min(lowest, stretch);
    hasRisen ||= stretch - lowest > chance;
  }
  return found;
}

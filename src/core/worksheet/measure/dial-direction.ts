/**
 * Which way the worksheet's dial runs: as said, or else the way in which the stretch rises with the torque.
 * Units: SI only (m, N·m).
 * Source: a band that is pulled harder is longer; derived here.
 */
import { fitLine } from '../../line.ts';
import { sum } from '../../summary.ts';
import type { WorksheetRig } from '../inputs.ts';
import type { Outcome } from '../outcome.ts';
import { worksheetElongations } from './dial.ts';
import type { RowsResult, UsableRow } from './readings.ts';

/** The way the dial runs, and whether it was said or taken from the readings. */
export interface DialDirection {
  readonly backwards: boolean; // the number falls as the band stretches
  readonly isSaid: boolean;
}

/** The direction; undefined while it is not said and no three readings show it. */
export function dialDirection(
  rig: WorksheetRig,
  rows: Outcome<RowsResult>,
): DialDirection | undefined {
  if (rig.dialRunsBackwards !== undefined)
    return { backwards: rig.dialRunsBackwards, isSaid: true };
  if (!rows.ready) return undefined;
  const [backwards, forwards] = [true, false].map((way) => upperLine(rig, rows, way));
  if (!backwards || !forwards) return undefined;
  return { backwards: isBetter(backwards, forwards), isSaid: false };
}

interface Line {
  readonly slope: number;
  readonly misfit: number; // sum of squares
}

/** One that rises before one that falls; of two that rise the straighter one, for whole turns count the same either way. */
const isBetter = (one: Line, other: Line): boolean =>
  one.slope > 0 && other.slope > 0 ? one.misfit < other.misfit : one.slope > other.slope;

/** The rows of the series that has most of them, the first of several. */
function longestSeries({ firsts, used }: RowsResult): readonly UsableRow[] {
  const all = firsts.map((first) => used.filter(({ series }) => series === first.series));
  return all.reduce((longest, rows) => (rows.length > longest.length ? rows : longest));
}

/** Whether a line through the rows is more than the two points that it is drawn through. */
const hasLine = (rows: readonly UsableRow[]): boolean =>
  rows.length > 2 && new Set(rows.map(({ torque }) => torque)).size > 1;

/** The line through the upper half of the readings, where the band is straight, if the dial ran that way. */
function upperLine(rig: WorksheetRig, rows: RowsResult, way: boolean): Line | undefined {
  const used = longestSeries(rows);
  const top = Math.max(...used.map(({ torque }) => torque));
  const upper = used.filter(({ torque }) => torque >= top / 2);
  const seen = hasLine(upper) ? upper : used;
  const torques = seen.map(({ torque }) => torque);
  const travel = worksheetElongations(
    { ...rig, dialRunsBackwards: way },
    () => used[0] as UsableRow,
    seen,
  );
  if (!travel.ready || !hasLine(seen)) return undefined;
  const { intercept, slope } = fitLine(torques, travel.elongations);
  const off = travel.elongations.map((y, i) => y - intercept - slope * (torques[i] as number));
  return { slope, misfit: sum(off.map((each) => each ** 2)) };
}

/** The rig with its dial's direction filled in as found. */
export const withDirection = (
  rig: WorksheetRig,
  found: DialDirection | undefined,
): WorksheetRig => ({
  ...rig,
  dialRunsBackwards: found?.backwards,
});

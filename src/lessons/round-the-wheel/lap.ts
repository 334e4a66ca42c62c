/**
 * One lap of a place on the band: the slack strand, the idle wheel, the strand that cuts, the driving wheel, as shares of
 * the lap, and the stress on the outer face at each.
 * Units: Pa; shares of a lap have none.
 * Source: derived here; on the driving wheel the pull falls from the tight to the slack strand, taken as even.
 */
import type { RunningBand } from './running-band.ts';

/** What the stress along a lap depends on. */
export type LapStresses = Pick<RunningBand, 'slackStress' | 'tightStress' | 'edgeBend'>;

/** Where the pieces of a lap end, in their order; the log is halfway along the strand that cuts. */
export function lapEnds(strandShare: number) {
  return {
    slack: strandShare,
    idle: 0.5,
    log: 0.5 + strandShare / 2,
    cutting: 0.5 + strandShare,
    driving: 1,
  };
}

/** Stress on the outer face at a share of the lap; on a wheel bending is added. */
export function stressAt(place: number, strandShare: number, stresses: LapStresses): number {
  const { slackStress, tightStress, edgeBend } = stresses;
  const ends = lapEnds(strandShare);
  if (place < ends.slack) return slackStress;
  if (place < ends.idle) return slackStress + edgeBend;
  if (place < ends.log) return slackStress;
  if (place < ends.cutting) return tightStress;
  const along = (place - ends.cutting) / (1 - ends.cutting);
  return tightStress + along * (slackStress - tightStress) + edgeBend;
}

/**
 * The window of tension: above the least that serves, below the most that is borne, and which edge binds.
 * Units: SI only (Pa).
 * Source: definition; the edges by `tightness/low-edges.ts` and `tightness/high-edges.ts`.
 */
export {
  type BentBand,
  type LifeWish,
  stressAtWheelLimit,
  stressToKeepLife,
  stressToPeak,
} from './tightness/high-edges.ts';
export {
  type GripWish,
  type StraightWish,
  stressToGrip,
  stressToKeepStraight,
} from './tightness/low-edges.ts';

/** What asks for more tension. */
export type LowCause = 'grip' | 'straightness';

/** What asks for less. */
export type HighCause = 'yield' | 'life' | 'bandMaker' | 'millMaker';

/** One edge. */
export interface WindowEdge<Cause extends LowCause | HighCause> {
  readonly cause: Cause;
  readonly stress: number; // Pa; infinite: nothing is enough; below 0: nothing is borne
}

/** The range between the edges that bind. */
export interface TensionWindow {
  readonly low: WindowEdge<LowCause> | undefined; // that binds: the highest
  readonly high: WindowEdge<HighCause> | undefined; // that binds: the lowest
  readonly isOpen: boolean; // there is a tension between them
}

/** The window between edges, each kind possibly without any; of equals the first binds. */
export function tensionWindow(
  lows: readonly WindowEdge<LowCause>[],
  highs: readonly WindowEdge<HighCause>[],
): TensionWindow {
  const low = [...lows].sort((a, b) => b.stress - a.stress)[0];
  const high = [...highs].sort((a, b) => a.stress - b.stress)[0];
  const [from, to] = [low?.stress ?? 0, high?.stress ?? Number.POSITIVE_INFINITY];
  return { low, high, isOpen: to > 0 && Number.isFinite(from) && from <= to };
}

/**
 * The highest load that keeps the band within what the makers allow.
 * Units: SI only (N·m of a torque, Pa of a pressure).
 * Source: definition; the limit of limits.ts, held against the stress of stress-at-load.ts with its expanded uncertainty.
 * That stress is in proportion to what the load has above the no-load one, which is so a part of what is told here.
 */
import { rootBetween } from '../../root.ts';
import { type StressAtLoad, type StressTellers, stressAtLoad } from './stress-at-load.ts';

/** The highest load, and what tells it. */
export interface AllowedLoad {
  readonly load: number; // N·m or Pa, the no-load one in it
  readonly by: StressAtLoad['by'];
  readonly beyondReadings: boolean; // by their line, which nobody has seen so far up
}

const DOUBLINGS = 40; // from 1 N·m or 1 Pa to more than any screw or pump gives

/** The highest stress that a load may give, 95 %, Pa; 0 where it does not pull yet. */
function reachAt(tellers: StressTellers, load: number): number {
  const at = stressAtLoad(tellers, load);
  return at ? at.stress + at.expandedUncertainty : 0;
}

/** A load that `isWithin` does not let pass; undefined where it lets all pass. */
function firstBeyond(isWithin: (load: number) => boolean, start: number): number | undefined {
  let load = start;
  for (let i = 0; i < DOUBLINGS; i++, load *= 2) if (!isWithin(load)) return load;
  return undefined;
}

/** The highest load whose stress, uncertainty included, both makers allow; undefined without a limit, or where nothing tells the stress. */
export function allowedLoad(
  allowed: number | undefined, // Pa
  tellers: StressTellers,
): AllowedLoad | undefined {
  if (allowed === undefined) return undefined;
  const isWithin = (load: number): boolean => reachAt(tellers, load) <= allowed;
  const { measured } = tellers;
  const beyond = firstBeyond(isWithin, measured.ready ? measured.topTorque : 1);
  if (beyond === undefined) return undefined;
  const load = rootBetween((load) => reachAt(tellers, load) - allowed, 0, beyond);
  const told = stressAtLoad(tellers, load);
  if (!told) return undefined;
  const isRead = measured.ready && told.by === 'readings';
  return { load, by: told.by, beyondReadings: isRead && load > measured.topTorque };
}

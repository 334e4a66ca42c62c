/**
 * The highest load that keeps the band within what the makers allow.
 * Units: SI only (N·m of a torque, Pa of a pressure).
 * Source: definition; the limit of limits.ts, held against the stress of stress-at-load.ts with its expanded uncertainty,
 * and as far up as trials reach where it is calculated.
 * That stress is in proportion to what the load has above the no-load one, which is so a part of what is told here.
 */
import { rootBetween } from '../../root.ts';
import { upperReach } from '../predict/upper-reach.ts';
import { type StressAtLoad, type StressTellers, stressAtLoad } from './stress-at-load.ts';

/** The highest load, and what tells it. */
export interface AllowedLoad {
  readonly load: number; // N·m or Pa, the no-load one in it
  readonly by: StressAtLoad['by'];
}

const DOUBLINGS = 40; // from 1 N·m or 1 Pa to more than any screw or pump gives

/** The highest stress that a load may give, 95 %, Pa, a calculated one reaching to `upper` times itself; 0 where it does not pull yet. */
function reachAt(tellers: StressTellers, load: number, upper = 1): number {
  const at = stressAtLoad(tellers, load);
  if (!at) return 0;
  const toFirstOrder = at.stress + at.expandedUncertainty;
  return at.by === 'calculation' ? Math.max(toFirstOrder, upper * at.stress) : toFirstOrder;
}

/** A load that reaches beyond what is allowed; undefined where none does. */
function firstBeyond(reach: (load: number) => number, allowed: number): number | undefined {
  const loads = Array.from({ length: DOUBLINGS }, (_, doublings) => 2 ** doublings);
  return loads.find((load) => reach(load) > allowed);
}

/** Where the stress first reaches what is allowed, and what tells it there; undefined where it never does, or nothing tells it. */
function loadWithin(
  allowed: number,
  tellers: StressTellers,
  upper?: number,
): AllowedLoad | undefined {
  const reach = (load: number): number => reachAt(tellers, load, upper);
  const beyond = firstBeyond(reach, allowed);
  if (beyond === undefined) return undefined;
  const load = rootBetween((tried) => reach(tried) - allowed, 0, beyond);
  const by = stressAtLoad(tellers, load)?.by;
  return by && { load, by };
}

/** The highest load whose stress, uncertainty included, both makers allow; undefined without a limit, or where nothing tells the stress. */
export function allowedLoad(
  allowed: number | undefined, // Pa
  tellers: StressTellers,
): AllowedLoad | undefined {
  if (allowed === undefined) return undefined;
  const toFirstOrder = loadWithin(allowed, tellers);
  if (toFirstOrder?.by !== 'calculation') return toFirstOrder;
  return loadWithin(allowed, tellers, upperReach(tellers.theory, toFirstOrder.load));
}

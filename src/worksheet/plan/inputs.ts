/**
 * What the sheet plans to measure: the reader's boxes, and what stands for those that are empty.
 * Units: SI (m, N·m; Pa of a cylinder); loads are shares of the top load.
 * Source: what stands for an empty box, common practice, no source.
 */

import { type ChangeablePlan, planLimits, startingShare } from '../../core/plan.ts';
import type { InputValue, Worksheet } from '../../core/worksheet.ts';
import { mostDragShare, mostNoLoadShare } from '../../core/worksheet.ts';
import { toSi } from '../../units/si-value.ts';
import type { PlanTop, TopFrom } from './default-top.ts';
import { asTyped, type LoadScale, readableAbove, readableBelow, seriesTorques } from './torques.ts';

/** What is typed of a plan, or stands for it. */
export interface PlanBoxes {
  readonly top: PlanTop | undefined;
  readonly firstTorque: InputValue; // N·m
  readonly steps: InputValue;
  readonly series: InputValue;
}

/** A plan that can be tried out. */
export interface Planned {
  readonly plan: ChangeablePlan;
  readonly topTorque: InputValue; // N·m, as printed
  readonly topFrom: TopFrom | undefined;
  readonly firstTorque: InputValue; // N·m, as typed
  readonly torques: readonly number[]; // N·m, one for each step; empty while no top torque is known
  readonly barIsAssumed: boolean;
  readonly dialIsAssumed: boolean;
}

/** Why a plan cannot be tried out. */
export type PlanTrouble = 'steps' | 'series' | 'firstTorque';

/** Gauge length and graduation that stand for empty boxes, and the longer bar, m; round in either system. */
export const RIGS = {
  metric: { bar: 0.4, graduation: 1e-5, longBar: 0.6 },
  us: {
    bar: toSi(16, 'length', 'us'),
    graduation: toSi(0.0005, 'stretch', 'us'),
    longBar: toSi(24, 'length', 'us'),
  },
} as const;

const isWithin = (value: InputValue, [least, most]: readonly [number, number]): value is number =>
  value !== undefined && value >= least && value <= most;

/** The no-load torque or pressure as typed, or the middle of what is assumed of one. */
export const dragBelow = (topTorque: number, { tensioner }: Worksheet): number =>
  tensioner.kind === 'cylinder'
    ? (tensioner.cylinder.noLoadPressure ?? (mostNoLoadShare * topTorque) / 2)
    : (tensioner.dragTorque ?? (mostDragShare * topTorque) / 2);

/** A torque as a share of the load at the top torque. */
export function loadShare(torque: number, topTorque: number, worksheet: Worksheet): number {
  const drag = dragBelow(topTorque, worksheet);
  return (torque - drag) / (topTorque - drag);
}

/** Where a series is to begin, as a share of the load at the top; a first torque below the no-load torque begins at none. */
function firstShareOf(first: InputValue, top: InputValue, worksheet: Worksheet): number {
  if (first === undefined || top === undefined) return startingShare;
  return Math.max(0, loadShare(first, top, worksheet));
}

/** What a plan's loads hang on beside the plan. */
interface SeriesAt {
  readonly topTorque: InputValue; // N·m
  readonly firstTorque: InputValue; // N·m, as asked for; without, where the plan's share of the load puts it
  readonly worksheet: Worksheet;
  readonly scale: LoadScale;
}

/** The torques of a plan as they are printed, N·m; none while no top torque is known. */
function torquesOf({ firstShare, steps }: ChangeablePlan, at: SeriesAt): readonly number[] {
  const { topTorque: top, firstTorque, worksheet, scale } = at;
  if (top === undefined) return [];
  const drag = dragBelow(top, worksheet);
  const first = firstTorque ?? drag + firstShare * (top - drag);
  const ends = { first, isTyped: firstTorque !== undefined, top, steps };
  return seriesTorques(ends, scale);
}

/** The plan as it is printed: with the loads of those torques, which so are tried. */
function asPrinted(plan: ChangeablePlan, at: SeriesAt): ChangeablePlan {
  const { topTorque: top, worksheet } = at;
  if (top === undefined) return plan;
  const shares = torquesOf(plan, at).map((torque) => loadShare(torque, top, worksheet));
  return { ...plan, loads: shares.map((share) => Math.max(0, share)) };
}

/** A plan that was changed in one thing, as it would be printed; where its start was changed, the typed one does not hold. */
export function changedAsPrinted(
  changed: ChangeablePlan,
  { plan, topTorque, firstTorque }: Planned,
  worksheet: Worksheet,
  scale: LoadScale,
): ChangeablePlan {
  const first = changed.firstShare === plan.firstShare ? firstTorque : undefined;
  return asPrinted(changed, { topTorque, firstTorque: first, worksheet, scale });
}

/** The top torque as it is printed. */
function printedTop({ torque, from }: PlanTop, scale: LoadScale): number {
  if (from === 'typed') return asTyped(torque, scale);
  return from === 'limits' ? readableBelow(torque, scale) : readableAbove(torque, scale);
}

/** The plan, or what is wrong with it. */
export function plannedFrom(
  boxes: PlanBoxes,
  worksheet: Worksheet,
  scale: LoadScale,
): Planned | PlanTrouble {
  const { top, steps, series, firstTorque } = boxes;
  const { rig } = worksheet;
  if (!isWithin(steps, planLimits.steps)) return 'steps';
  if (!isWithin(series, planLimits.series)) return 'series';
  const topTorque = top && printedTop(top, scale);
  const firstShare = firstShareOf(firstTorque, topTorque, worksheet);
  if (!isWithin(firstShare, planLimits.firstShare)) return 'firstTorque';
  const { bar, graduation: usual } = RIGS[scale.system];
  const graduation = rig.graduation ?? usual;
  const readTo = rig.readTo ?? graduation;
  const gaugeLength = rig.gaugeLength ?? bar;
  const plan = { gaugeLength, graduation, readTo, firstShare, steps, series };
  const at = { topTorque, firstTorque, worksheet, scale };
  return {
    plan: asPrinted(plan, at),
    topTorque,
    topFrom: top?.from,
    firstTorque,
    torques: torquesOf(plan, at),
    barIsAssumed: rig.gaugeLength === undefined,
    dialIsAssumed: rig.graduation === undefined,
  };
}

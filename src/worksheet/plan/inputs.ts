/**
 * What the sheet plans to measure: the reader's boxes, and what stands for those that are empty.
 * Units: SI (m, N·m; Pa of a cylinder); loads are shares of the top load.
 * Source: what stands for an empty box, common practice, no source.
 */

import { type ChangeablePlan, planLimits, startingShare } from '../../core/plan.ts';
import type { InputValue, Worksheet } from '../../core/worksheet.ts';
import { loadName, mostDragShare, mostNoLoadShare } from '../../core/worksheet.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { toSi } from '../../units/si-value.ts';
import { seriesTorques } from './torques.ts';

/** What is typed of a plan, or stands for it. */
export interface PlanBoxes {
  readonly topTorque: InputValue; // N·m
  readonly firstTorque: InputValue; // N·m
  readonly steps: InputValue;
  readonly series: InputValue;
}

/** A plan that can be tried out. */
export interface Planned {
  readonly plan: ChangeablePlan;
  readonly topTorque: number | undefined; // N·m
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

/** First torque, and its share of the top load; below the no-load torque a series begins at none. */
function start({ firstTorque }: PlanBoxes, top: number | undefined, worksheet: Worksheet) {
  if (top === undefined) return { first: undefined, firstShare: startingShare };
  if (firstTorque !== undefined)
    return { first: firstTorque, firstShare: Math.max(0, loadShare(firstTorque, top, worksheet)) };
  const drag = dragBelow(top, worksheet);
  return { first: drag + startingShare * (top - drag), firstShare: startingShare };
}

/** The plan, or what is wrong with it. */
export function plannedFrom(
  boxes: PlanBoxes,
  worksheet: Worksheet,
  system: UnitSystem,
): Planned | PlanTrouble {
  const { steps, series } = boxes;
  const { rig } = worksheet;
  if (!isWithin(steps, planLimits.steps)) return 'steps';
  if (!isWithin(series, planLimits.series)) return 'series';
  const { topTorque } = boxes;
  const { first, firstShare } = start(boxes, topTorque, worksheet);
  if (!isWithin(firstShare, planLimits.firstShare)) return 'firstTorque';
  const { bar, graduation: usual } = RIGS[system];
  const graduation = rig.graduation ?? usual;
  const readTo = rig.readTo ?? graduation;
  const plan = {
    gaugeLength: rig.gaugeLength ?? bar,
    graduation,
    readTo,
    firstShare,
    steps,
    series,
  };
  return {
    plan,
    topTorque,
    torques:
      first === undefined || topTorque === undefined
        ? []
        : seriesTorques(
            { first, firstIsTyped: boxes.firstTorque !== undefined, top: topTorque, steps },
            system,
            loadName(worksheet.tensioner),
          ),
    barIsAssumed: rig.gaugeLength === undefined,
    dialIsAssumed: rig.graduation === undefined,
  };
}

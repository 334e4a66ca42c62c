/**
 * What the parts of the efficiency plot share: its scales, the reader's screw at other lead angles, and the angle up
 * to which its thread holds.
 * Units: SI (angles in rad); drawing units otherwise.
 */
import { effectiveFriction } from '../../../core/screw.ts';
import { linearScale, type Scale } from '../../../figures/scale.ts';
import { screwOf } from '../friction-doubt.ts';
import type { State } from '../state.ts';
import type { EfficiencyLayout } from './layout.ts';

/** Ends of the lead angles that are drawn, in rad. */
export const STEEPEST = Math.PI / 4;
export const FLATTEST = 0.002;

/** What each part of the plot is drawn from. */
export interface PlotProps {
  readonly state: State;
  readonly layout: EfficiencyLayout;
  readonly x: Scale;
  readonly y: Scale;
}

/** Scales of the plot: lead angle across, efficiency up. */
export function efficiencyScales({ plot }: EfficiencyLayout) {
  return {
    x: linearScale([0, STEEPEST], [plot.left, plot.right]),
    y: linearScale([0, 1], [plot.bottom, plot.top]),
  };
}

/** The reader's screw with another lead angle. */
export function screwAt(values: State['values'], angle: number) {
  return screwOf({ ...values, lead: Math.PI * values.meanDiameter * Math.tan(angle) });
}

/** The lead angle at which the load just turns the thread; the flank's share is taken where the answer lies. */
export function holdingAngle({ values }: State): number {
  const { frictionAngle } = values;
  return Math.atan(effectiveFriction(screwAt(values, Math.max(FLATTEST, frictionAngle))));
}

/** A plot of stress over torque: its frame in drawing units, its scales, and the lines and areas in them. SI otherwise. */
import { linearScale } from '../scale.ts';

/** The edges of a plot. */
export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A point of the plot. */
export interface TorquePoint {
  readonly torque: number; // N·m
  readonly stress: number; // Pa
}

type Ends = readonly [number, number];

/** The scales of a plot from its frame and the two ends of torque and stress. */
export function torqueScales(frame: Frame, torqueEnds: Ends, stressEnds: Ends) {
  return {
    frame,
    torqueEnds,
    stressEnds,
    x: linearScale(torqueEnds, [frame.left, frame.right]),
    y: linearScale(stressEnds, [frame.bottom, frame.top]),
  };
}

/** Both scales of a plot. */
export type TorqueScales = ReturnType<typeof torqueScales>;

/** A path through points. */
export function pathThrough({ x, y }: TorqueScales, points: readonly TorquePoint[]): string {
  return `M${points.map(({ torque, stress }) => `${x(torque)} ${y(stress)}`).join('L')}`;
}

/** A line of one slope, Pa per N·m, through (from, stress) up to a torque. */
export function straight(from: TorquePoint, slope: number, upTo: number): readonly TorquePoint[] {
  return [from, { torque: upTo, stress: from.stress + slope * (upTo - from.torque) }];
}

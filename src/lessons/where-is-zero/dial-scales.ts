/** A plot of the dial over torque: its frame in drawing units, its scales, and paths in them. SI otherwise. */
import { linearScale } from '../../figures/scale.ts';
import type { Frame } from '../../figures/stress-plot/scales.ts';

/** A point of the plot. */
export interface DialPoint {
  readonly torque: number; // N·m
  readonly dial: number; // m
}

type Ends = readonly [number, number];

/** The scales of a plot from its frame and the two ends of torque and dial. */
export function dialScales(frame: Frame, torqueEnds: Ends, dialEnds: Ends) {
  return {
    frame,
    torqueEnds,
    dialEnds,
    x: linearScale(torqueEnds, [frame.left, frame.right]),
    y: linearScale(dialEnds, [frame.bottom, frame.top]),
  };
}

/** Both scales of a plot. */
export type DialScales = ReturnType<typeof dialScales>;

const TENTH = 10; // of a drawing unit: finer is not seen

/** A path through points. */
export function pathThrough({ x, y }: DialScales, points: readonly DialPoint[]): string {
  const tenths = (place: number) => Math.round(place * TENTH) / TENTH;
  return `M${points.map(({ torque, dial }) => `${tenths(x(torque))} ${tenths(y(dial))}`).join('L')}`;
}

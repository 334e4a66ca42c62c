/**
 * What a line misses the readings by, as a strip under the plot on the same torques.
 * Units: SI in the readings; drawing units otherwise.
 */

import type { FigureState } from '../../../figures/figure.ts';
import { ReadingMarks } from '../../../figures/stress-plot/ReadingMarks.tsx';
import { type Frame, torqueScales } from '../../../figures/stress-plot/scales.ts';
import { TorqueAxes } from '../../../figures/stress-plot/TorqueAxes.tsx';
import type { StressReading } from '../results.worked.ts';

const FURTHEST = 27e6; // Pa: what misses by more stands at the strip's edge

interface MissStripProps {
  readonly state: FigureState;
  readonly frame: Frame;
  readonly torqueEnds: readonly [number, number];
  readonly readings: readonly StressReading[];
  /** The line's stress at a torque, counted as the readings' is. */
  readonly stressOf: (torque: number) => number;
}

/** Reading less line, with the reading's error bars. */
export function MissStrip({ state, frame, torqueEnds, readings, stressOf }: MissStripProps) {
  const scales = torqueScales(frame, torqueEnds, [-FURTHEST, FURTHEST]);
  const misses = readings.map((reading) => ({
    ...reading,
    stress: reading.stress - stressOf(reading.torque),
  }));
  return (
    <g>
      <TorqueAxes state={state} scales={scales} upright="reading less line" uprightTicks={3} />
      <path class="thin" d={`M${frame.left} ${scales.y(0)}H${frame.right}`} />
      <ReadingMarks readings={misses} scales={scales} />
    </g>
  );
}

/**
 * The prediction over torque as an area between its two ends, with its middle line.
 * Units: SI in the points; drawing units otherwise.
 */
import { pathThrough, type TorquePoint, type TorqueScales } from './scales.ts';

/** The prediction at one torque: middle and the two ends of its interval. */
export interface PlottedPrediction extends TorquePoint {
  readonly low: number; // Pa
  readonly high: number; // Pa
}

interface PredictionAreaProps {
  readonly points: readonly PlottedPrediction[];
  readonly scales: TorqueScales;
  readonly withMiddle?: boolean | undefined;
}

/** The area with thin edges, so that it stays visible in one ink. */
export function PredictionArea({ points, scales, withMiddle = false }: PredictionAreaProps) {
  const low = points.map(({ torque, low: stress }) => ({ torque, stress }));
  const high = points.map(({ torque, high: stress }) => ({ torque, stress }));
  const round = [...low, ...[...high].reverse()];
  return (
    <g data-sym="predictedStress">
      <path class="shade-fill" d={`${pathThrough(scales, round)}Z`} />
      <path class="axis" d={pathThrough(scales, low) + pathThrough(scales, high)} />
      {withMiddle && <path class="thin" d={pathThrough(scales, points)} />}
    </g>
  );
}

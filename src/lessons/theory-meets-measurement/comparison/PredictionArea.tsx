/**
 * The prediction over torque as an area between its two ends, with its middle line.
 * Units: SI in the points; drawing units otherwise.
 */
import type { PredictedPoint } from '../../../core/worksheet.ts';
import { pathThrough, type TorqueScales } from './torque-frame.ts';

interface PredictionAreaProps {
  readonly points: readonly PredictedPoint[];
  readonly scales: TorqueScales;
  readonly withMiddle?: boolean;
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

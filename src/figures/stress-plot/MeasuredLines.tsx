/**
 * What the readings are taken to say: the stress that all of them together give, with its ends where they are shown,
 * and the line through both errors, dashed.
 * Units: SI in the points; drawing units otherwise.
 */
import { pathThrough, type TorquePoint, type TorqueScales } from './scales.ts';

type Points = readonly TorquePoint[];

interface MeasuredLinesProps {
  readonly scales: TorqueScales;
  /** From no tension at the drag to the top torque. */
  readonly whole: Points;
  /** The ends of its 95 % interval. */
  readonly ends?: readonly Points[];
  readonly throughBothErrors?: Points | undefined;
}

/** The lines of a measurement. */
export function MeasuredLines({ scales, whole, ends = [], throughBothErrors }: MeasuredLinesProps) {
  const path = (points: Points) => pathThrough(scales, points);
  return (
    <g data-sym="ownEfficiency">
      {ends.length > 0 && (
        <path class="steel-thin" d={ends.map(path).join('')} stroke-dasharray="2 4" />
      )}
      <path class="steel-line" d={path(whole)} />
      {throughBothErrors && (
        <path class="steel-thin" d={path(throughBothErrors)} stroke-dasharray="9 4" />
      )}
    </g>
  );
}

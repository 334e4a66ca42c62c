/**
 * Readings as points with error bars both ways, 95 %; those in the toe are hollow. One off the plot is an arrowhead
 * that points the way it lies, since its place is not the edge.
 * Units: SI in the readings; drawing units otherwise.
 */
import { BAR_REACH } from './bar-reach.ts';
import type { TorquePoint, TorqueScales } from './scales.ts';

/** One reading as a stress, with the standard uncertainties of wrench and dial. */
export interface PlottedReading extends TorquePoint {
  readonly sdTorque: number; // N·m
  readonly sdStress: number; // Pa
  readonly inToe: boolean; // in no line
}

interface ReadingMarksProps {
  readonly readings: readonly PlottedReading[];
  readonly scales: TorqueScales;
}

interface ReadingMarkProps {
  readonly reading: PlottedReading;
  readonly scales: TorqueScales;
}

/** Drawn about its own middle, so that a reading which moves changes in one place. */
function Mark({ reading, scales: { x, y, frame } }: ReadingMarkProps) {
  const { torque, stress, sdTorque, sdStress, inToe } = reading;
  const [middle, height] = [x(torque), y(stress)];
  const along = x(BAR_REACH * sdTorque) - x(0);
  const reach = y(0) - y(BAR_REACH * sdStress);
  const up = Math.min(reach, height - frame.top);
  const down = Math.min(reach, frame.bottom - height);
  const ink = inToe ? 'steel-thin paper-fill' : 'steel-fill';
  if (up < 0)
    return <path class={ink} d="M-4 7H4L0 0Z" transform={`translate(${middle} ${frame.top})`} />;
  if (down < 0)
    return (
      <path class={ink} d="M-4 -7H4L0 0Z" transform={`translate(${middle} ${frame.bottom})`} />
    );
  return (
    <g transform={`translate(${middle} ${height})`}>
      <path class="steel-thin" d={`M${-along} 0H${along}M0 ${-up}V${down}`} />
      <circle class={ink} r={3} />
    </g>
  );
}

/** The readings in a plot. */
export function ReadingMarks({ readings, scales }: ReadingMarksProps) {
  return (
    <g data-sym="measuredStress">
      {readings.map((reading, place) => (
        <Mark key={place} reading={reading} scales={scales} />
      ))}
    </g>
  );
}

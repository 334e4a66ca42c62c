/**
 * Readings as points with error bars both ways, 95 %; those in the toe are hollow. One off the plot is an arrowhead
 * that points the way it lies, since its place is not the edge. All bars are one line and all points of an ink one
 * shape: a series may have hundreds.
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

const POINT = 'm-3 0a3 3 0 1 0 6 0a3 3 0 1 0 -6 0z';

/** The point of a reading, or the arrowhead in its stead. */
function pointPath({ torque, stress }: PlottedReading, { x, y, frame }: TorqueScales): string {
  const [across, height] = [x(torque), y(stress)];
  if (height < frame.top) return `M${across} ${frame.top}l-4 7h8z`;
  if (height > frame.bottom) return `M${across} ${frame.bottom}l-4 -7h8z`;
  return `M${across} ${height}${POINT}`;
}

/** Its error bars, as far as the plot goes; none where it is off the plot. */
function barsPath(reading: PlottedReading, { x, y, frame }: TorqueScales): string {
  const { torque, stress, sdTorque, sdStress } = reading;
  const [across, height] = [x(torque), y(stress)];
  if (height < frame.top || height > frame.bottom) return '';
  const along = x(BAR_REACH * sdTorque) - x(0);
  const reach = y(0) - y(BAR_REACH * sdStress);
  const [top, bottom] = [
    Math.max(frame.top, height - reach),
    Math.min(frame.bottom, height + reach),
  ];
  return `M${across - along} ${height}h${2 * along}M${across} ${top}V${bottom}`;
}

/** The readings in a plot. */
export function ReadingMarks({ readings, scales }: ReadingMarksProps) {
  if (readings.length === 0) return <g data-sym="measuredStress" />;
  const points = (inToe: boolean) =>
    readings
      .filter((reading) => reading.inToe === inToe)
      .map((reading) => pointPath(reading, scales))
      .join('');
  return (
    <g data-sym="measuredStress">
      <path
        class="steel-thin"
        data-part="bars"
        d={readings.map((each) => barsPath(each, scales)).join('')}
      />
      <path class="steel-thin paper-fill" data-part="toe" d={points(true)} />
      <path class="steel-fill" data-part="line" d={points(false)} />
    </g>
  );
}

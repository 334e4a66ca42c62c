/**
 * Readings as points with error bars both ways, 95 %; those in the toe are hollow.
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

/** The readings in a plot; one that lies off the plot stands at its edge. */
export function ReadingMarks({ readings, scales }: ReadingMarksProps) {
  const { x, y, frame } = scales;
  const within = (place: number) => Math.min(frame.bottom, Math.max(frame.top, place));
  return (
    <g data-sym="measuredStress">
      {readings.map(({ torque, stress, sdTorque, sdStress, inToe }, place) => {
        const [middle, height] = [x(torque), within(y(stress))];
        const [along, up] = [BAR_REACH * sdTorque, BAR_REACH * sdStress];
        const bars = [
          `M${x(torque - along)} ${height}H${x(torque + along)}`,
          `M${middle} ${within(y(stress - up))}V${within(y(stress + up))}`,
        ];
        return (
          <g key={place}>
            <path class="steel-thin" d={bars.join('')} />
            <circle
              class={inToe ? 'steel-thin paper-fill' : 'steel-fill'}
              cx={middle}
              cy={height}
              r={3}
            />
          </g>
        );
      })}
    </g>
  );
}

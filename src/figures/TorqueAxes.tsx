/**
 * The axes of a plot over torque, with round ticks in the reader's units.
 * Units: SI in the scales; drawing units otherwise.
 */
import { unitLabel } from '../units/unit-label.ts';
import type { FigureState } from './figure.ts';
import { ticks } from './scale.ts';
import type { TorqueScales } from './torque-frame.ts';

interface TorqueAxesProps {
  readonly state: FigureState;
  readonly scales: TorqueScales;
  /** What stands over the upright axis, without its unit. */
  readonly upright?: string;
  readonly uprightTicks?: number;
  /** Numbers and name under the level axis. */
  readonly numbered?: boolean;
}

function UprightTicks({ state, scales, uprightTicks = 4 }: TorqueAxesProps) {
  const { frame, stressEnds, y } = scales;
  return (
    <g>
      {ticks(stressEnds[0], stressEnds[1], 'stress', state.system, uprightTicks).map((tick) => (
        <g key={`y${tick.text}`}>
          <path class="axis" d={`M${frame.left - 5} ${y(tick.value)}H${frame.left}`} />
          <text class="note" x={frame.left - 8} y={y(tick.value) + 5} text-anchor="end">
            {tick.text}
          </text>
        </g>
      ))}
    </g>
  );
}

function LevelTicks({ state, scales, numbered = true }: TorqueAxesProps) {
  const { frame, torqueEnds, x } = scales;
  const { system, narrow } = state;
  return (
    <g>
      {ticks(torqueEnds[0], torqueEnds[1], 'torque', system, narrow ? 4 : 8).map((tick) => (
        <g key={`x${tick.text}`}>
          <path class="axis" d={`M${x(tick.value)} ${frame.bottom}V${frame.bottom + 5}`} />
          {numbered && (
            <text class="note" x={x(tick.value)} y={frame.bottom + 20} text-anchor="middle">
              {tick.text}
            </text>
          )}
        </g>
      ))}
      {numbered && (
        <text class="note" x={frame.right} y={frame.bottom + 38} text-anchor="end">
          torque on the wrench, {unitLabel('torque', system)}
        </text>
      )}
    </g>
  );
}

/** Upright axis of stress, level axis of torque. */
export function TorqueAxes(props: TorqueAxesProps) {
  const { state, scales, upright = 'stress' } = props;
  const { left, right, top, bottom } = scales.frame;
  return (
    <g>
      <path class="axis" d={`M${left} ${top}V${bottom}H${right}`} />
      <UprightTicks {...props} />
      <LevelTicks {...props} />
      <text class="note" x={state.narrow ? 0 : left - 44} y={top - 10}>
        {upright}, {unitLabel('stress', state.system)}
      </text>
    </g>
  );
}

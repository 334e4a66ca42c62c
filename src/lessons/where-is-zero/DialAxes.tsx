/**
 * The axes of a plot of the dial over torque, with round ticks in the reader's units.
 * Units: SI in the scales; drawing units otherwise.
 */
import { LevelTicks, UprightTicks } from '../../figures/axis-ticks.tsx';
import { ticks } from '../../figures/scale.ts';
import { unitLabel } from '../../units/label.ts';
import type { DialScales } from './dial-scales.ts';
import type { State } from './state.ts';

interface DialAxesProps {
  readonly state: State;
  readonly scales: DialScales;
  /** What stands over the upright axis of a wide page, without its unit. */
  readonly upright: string;
  /** How many round numbers each axis has, about. */
  readonly uprightTicks?: number;
  readonly levelTicks?: number;
}

/** Upright axis of the dial, level axis of torque. */
export function DialAxes(props: DialAxesProps) {
  const { state, scales, upright } = props;
  const { narrow, system } = state;
  const { uprightTicks = narrow ? 4 : 6, levelTicks = narrow ? 4 : 8 } = props;
  const { frame, dialEnds, torqueEnds, x, y } = scales;
  const { left, right, top, bottom } = frame;
  const round = ticks(Math.max(0, torqueEnds[0]), torqueEnds[1], 'torque', system, levelTicks);
  return (
    <g>
      <path class="axis" d={`M${left} ${top}V${bottom}H${right}`} />
      <UprightTicks ticks={ticks(...dialEnds, 'stretch', system, uprightTicks)} x={left} y={y} />
      <LevelTicks ticks={round} x={x} y={bottom} drop={18} />
      <text class="note" x={right} y={bottom + 35} text-anchor="end">
        {narrow ? 'torque' : 'torque on the handle'}, {unitLabel('torque', system)}
      </text>
      <text class="note" x={narrow ? 0 : left - 48} y={top - 9}>
        {narrow ? 'dial' : upright}, {unitLabel('stretch', system)}
      </text>
    </g>
  );
}

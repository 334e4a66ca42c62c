/**
 * The axes of a plot over torque, with round ticks in the reader's units.
 * Units: SI in the scales; drawing units otherwise.
 */

import type { QuantityKind, UnitSystem } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';
import { LevelTicks, UprightTicks } from '../axis-ticks.tsx';
import { ticks } from '../scale.ts';
import type { TorqueScales } from './scales.ts';

/** Whose units, and for which width of screen. */
export interface PlotView {
  readonly system: UnitSystem;
  readonly narrow: boolean;
  readonly load?: QuantityKind; // torque unless said
}

interface TorqueAxesProps {
  readonly state: PlotView;
  readonly scales: TorqueScales;
  /** What stands over the upright axis, without its unit. */
  readonly upright?: string;
  readonly uprightTicks?: number;
  /** Numbers and name under the level axis. */
  readonly numbered?: boolean | undefined;
}

/** Upright axis of stress, level axis of torque. */
export function TorqueAxes({
  state,
  scales,
  upright = 'stress',
  uprightTicks = 4,
  numbered = true,
}: TorqueAxesProps) {
  const { frame, stressEnds, torqueEnds, x, y } = scales;
  const { left, right, top, bottom } = frame;
  const { system, narrow, load = 'torque' } = state;
  return (
    <g>
      <path class="axis" d={`M${left} ${top}V${bottom}H${right}`} />
      <UprightTicks ticks={ticks(...stressEnds, 'stress', system, uprightTicks)} x={left} y={y} />
      <LevelTicks
        ticks={ticks(...torqueEnds, load, system, narrow ? 4 : 8)}
        x={x}
        y={bottom}
        drop={numbered ? 20 : undefined}
      />
      {numbered && (
        <text class="note" x={right} y={bottom + 38} text-anchor="end">
          {load === 'pressure' ? 'pressure on the gauge' : 'torque on the wrench'},{' '}
          {unitLabel(load, system)}
        </text>
      )}
      <text class="note" x={narrow ? 0 : left - 44} y={top - 10}>
        {upright}, {unitLabel('stress', system)}
      </text>
    </g>
  );
}

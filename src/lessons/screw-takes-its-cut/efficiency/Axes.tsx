/**
 * Axes of the efficiency plot: lead angle across, efficiency up.
 * Units: SI in the scales; drawing units otherwise.
 */
import { LevelTicks, UprightTicks } from '../../../figures/axis-ticks.tsx';
import { ticks } from '../../../figures/scale.ts';
import { type PlotProps, STEEPEST } from './frame.ts';

const CLEAR = 17; // from an axis to its numbers, past a grip on it

/** The two axes with their ticks and names. */
export function Axes({ state, layout, x, y }: PlotProps) {
  const { left, right, top, bottom } = layout.plot;
  const { system } = state;
  return (
    <g>
      <path class="axis" d={`M${left} ${top}V${bottom}H${right}`} />
      <UprightTicks ticks={ticks(0, 1, 'percent', system, 5)} x={left} y={y} gap={CLEAR} />
      <text class="note" x={4} y={top - 42}>
        efficiency, %
      </text>
      <LevelTicks
        ticks={ticks(0, STEEPEST, 'angle', system, layout.narrow ? 5 : 9)}
        x={x}
        y={bottom}
        drop={CLEAR + 11}
      />
      <text class="note" x={right} y={bottom + 46} text-anchor="end">
        lead angle, °
      </text>
    </g>
  );
}

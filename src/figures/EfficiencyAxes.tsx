/**
 * Axes of the efficiency plot: lead angle across, share of the effort up.
 * Units: SI in the scales; drawing units otherwise.
 */
import { type PlotProps, STEEPEST } from './efficiency-frame.ts';
import { ticks } from './scale.ts';

/** The two axes with their ticks and names. */
export function EfficiencyAxes({ state, layout, x, y }: PlotProps) {
  const { left, right, top, bottom } = layout.plot;
  return (
    <g>
      <path class="axis" d={`M${left} ${top}V${bottom}H${right}`} />
      {ticks(0, 1, 'percent', state.system, 5).map(({ value, text }) => (
        <g key={`y${text}`}>
          <path class="axis" d={`M${left - 5} ${y(value)}H${left}`} />
          <text class="note" x={left - 8} y={y(value) + 5} text-anchor="end">
            {text}
          </text>
        </g>
      ))}
      <text class="note" x={4} y={top - 12}>
        {layout.narrow ? 'arrives, %' : 'share of the effort that arrives, %'}
      </text>
      {ticks(0, STEEPEST, 'angle', state.system, layout.narrow ? 5 : 9).map(({ value, text }) => (
        <g key={`x${text}`}>
          <path class="axis" d={`M${x(value)} ${bottom}V${bottom + 5}`} />
          <text class="note" x={x(value)} y={bottom + 20} text-anchor="middle">
            {text}
          </text>
        </g>
      ))}
      <text class="note" x={right} y={bottom + 40} text-anchor="end">
        lead angle: how steeply the thread climbs, °
      </text>
    </g>
  );
}

/**
 * The stress in the steel as a bar on a straight scale, beside the range in use on small mills and the mill's setting.
 * Units: SI in the state; drawing units otherwise.
 */

import { workingStress } from '../../../core/assumptions.ts';
import { linearScale, ticks } from '../../../figures/scale.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { unitLabel } from '../../../units/label.ts';
import type { CountingPartProps } from './layout.ts';

const MOST = 300e6;
const HEIGHT = 12;

/** The bar, its scale, the range in use, the setting. */
export function StressRule({ state, layout }: CountingPartProps) {
  const { stress, setting } = state.values;
  const { left, right, y } = layout.stress;
  const x = linearScale([0, MOST], [left, right]);
  const top = y - HEIGHT;
  const inUse = { x: x(workingStress.low), width: x(workingStress.high) - x(workingStress.low) };
  return (
    <g>
      <rect class="steel-wash" {...inUse} y={top - 5} height={HEIGHT + 5} />
      <rect
        class="steel-fill"
        x={left}
        y={top}
        width={x(Math.min(stress, MOST)) - left}
        height={HEIGHT}
        data-sym="stress"
      />
      <path class="thin" d={`M${x(setting)} ${top - 9}V${y}`} />
      <text class="note halo" x={x(setting)} y={top - 12} text-anchor="middle">
        {layout.narrow ? 'set to' : 'this mill is set to'}{' '}
        {formatQuantity(setting, 'stress', state.system)}
      </text>
      <path class="axis" d={`M${left} ${y}H${right}`} />
      {ticks(0, MOST, 'stress', state.system, layout.narrow ? 3 : 6).map((tick) => (
        <g key={tick.text}>
          <path class="axis" d={`M${x(tick.value)} ${y}v5`} />
          <text
            class="note"
            x={x(tick.value)}
            y={y + 19}
            text-anchor={tick.value === 0 ? 'start' : 'middle'}
          >
            {tick.value === 0 ? `0 ${unitLabel('stress', state.system)}` : tick.text}
          </text>
        </g>
      ))}
    </g>
  );
}

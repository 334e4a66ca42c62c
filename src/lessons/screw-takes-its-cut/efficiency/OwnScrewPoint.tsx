/**
 * The reader's screw on its curve of efficiency, as a handle that changes the lead.
 * Units: SI in the state; drawing units otherwise.
 */

import { Handle } from '../../../figures/Handle.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { screwTakesItsCut } from '../model.ts';
import { holdingAngle, type PlotProps } from './frame.ts';

const BELOW = 17; // from the point to its words: under its own curve, which rises

/** Handle, lines to the axes, and the efficiency in figures, under the curve and clear of the limit's line. */
export function OwnScrewPoint({ state, layout, x, y }: PlotProps) {
  const { values, system } = state;
  const { leadAngle, meanDiameter, efficiency: arrives } = values;
  const perAngle = (Math.PI * meanDiameter) / Math.cos(leadAngle) ** 2;
  const [at, height] = [x(leadAngle), y(arrives)];
  const limit = x(holdingAngle(state));
  const beside = at + 22;
  const isAcross = beside < limit + 8 && beside + (layout.narrow ? 44 : 100) > limit;
  const isRoom = height + BELOW < layout.plot.bottom - 4;
  return (
    <g>
      <path class="construction" d={`M${layout.plot.left} ${height}H${at}V${layout.plot.bottom}`} />
      <Handle
        model={screwTakesItsCut}
        state={state}
        x={at}
        y={height}
        input="lead"
        label="Change the lead of the screw"
        drag="x"
        perUnit={perAngle / (x(1) - x(0))}
      />
      {isRoom && (
        <text
          class="halo"
          x={isAcross ? limit + 8 : beside}
          y={height + BELOW}
          data-sym="efficiency"
        >
          {formatQuantity(arrives, 'percent', system, { digits: 2 })}
          {layout.narrow ? '' : ` at ${formatQuantity(leadAngle, 'angle', system, { digits: 2 })}`}
        </text>
      )}
    </g>
  );
}

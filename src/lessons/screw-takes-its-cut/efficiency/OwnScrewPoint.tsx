/**
 * The reader's screw on its curve of efficiency, as a handle that changes the lead.
 * Units: SI in the state; drawing units otherwise.
 */

import { Handle } from '../../../figures/Handle.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { screwTakesItsCut } from '../model.ts';
import { holdingAngle, type PlotProps } from './frame.ts';

const LABEL_WIDTH = 100;

/** Handle, lines to the axes, and the efficiency in figures, clear of the limit's line. */
export function OwnScrewPoint({ state, layout, x, y }: PlotProps) {
  const { values, system } = state;
  const { leadAngle, meanDiameter, efficiency: arrives } = values;
  const perAngle = (Math.PI * meanDiameter) / Math.cos(leadAngle) ** 2;
  const [at, height] = [x(leadAngle), y(arrives)];
  const limit = x(holdingAngle(state));
  const beside = at + 24;
  const labelAt = beside < limit && beside + LABEL_WIDTH > limit ? limit + 8 : beside;
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
      <text class="halo" x={labelAt} y={height + 5} data-sym="efficiency">
        {formatQuantity(arrives, 'percent', system, { digits: 2 })}
        {layout.narrow ? '' : ` at ${formatQuantity(leadAngle, 'angle', system, { digits: 2 })}`}
      </text>
    </g>
  );
}

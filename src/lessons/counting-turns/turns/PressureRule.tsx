/**
 * The pressure of a hydraulic tensioner on a straight scale, with the grip that sets it, and the piece of the scale that
 * the friction of the seal hides.
 * Units: SI in the state; drawing units otherwise; the handle's `perUnit` in Pa.
 */

import { LevelTicks } from '../../../figures/axis-ticks.tsx';
import { Handle } from '../../../figures/Handle.tsx';
import { linearScale, ticks } from '../../../figures/scale.ts';
import { unitLabel } from '../../../units/label.ts';
import { countingTurns } from '../model.ts';
import type { CountingPartProps } from './layout.ts';

/** Scale, hidden piece, grip. */
export function PressureRule({ state, layout }: CountingPartProps) {
  const { pressure, sealPressure } = state.values;
  const { left, right, y } = layout.rule;
  const spec = countingTurns.inputs.pressure;
  const x = linearScale([spec.min, spec.max], [left, right]);
  return (
    <g>
      <text class="note" x={left} y={y - 34}>
        pressure, {unitLabel('pressure', state.system)}
      </text>
      <path class="axis" d={`M${left} ${y}H${right}`} />
      <LevelTicks
        ticks={ticks(spec.min, spec.max, 'pressure', state.system, layout.narrow ? 2 : 4)}
        x={x}
        y={y}
        drop={40}
      />
      <path
        class="limit"
        d={`M${x(Math.max(0, pressure - 2 * sealPressure))} ${y}H${x(pressure)}`}
        data-sym="sealPressure"
      />
      <Handle
        model={countingTurns}
        state={state}
        x={x(pressure)}
        y={y}
        input="pressure"
        label="Set the pressure"
        drag="x"
        perUnit={(spec.max - spec.min) / (right - left)}
      />
    </g>
  );
}

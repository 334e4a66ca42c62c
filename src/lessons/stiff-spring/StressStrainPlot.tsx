/**
 * Stress against strain: the straight spring part, the elastic limit, the little that comes after; the strip's place
 * on it, and the way back down when it is let go.
 * Units: SI in the state; drawing units otherwise.
 */

import { LevelTicks, UprightTicks } from '../../figures/axis-ticks.tsx';
import { ticks } from '../../figures/scale.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { STRIP } from './model.ts';
import {
  type Plot,
  steelLine,
  stressTicks,
  stressUnit,
  stripPlace,
  wholePlot,
} from './plot-frame.ts';
import type { State } from './state.ts';
import type { StripLayout } from './strip-layout.ts';

interface PlotProps {
  readonly state: State;
  readonly plot: Plot;
}

/** The axes of the plot or of its enlarged start. */
export function Axes({ state, plot }: PlotProps) {
  const { left, right, top, bottom, x, y, mostStrain } = plot;
  const { system, narrow } = state;
  return (
    <g>
      <path class="axis" d={`M${left} ${top}V${bottom}H${right}`} />
      <UprightTicks ticks={stressTicks(plot, system, narrow ? 2 : 4)} x={left} y={y} />
      <LevelTicks
        ticks={ticks(0, mostStrain, 'percent', system, narrow ? 2 : 4)}
        x={x}
        y={bottom}
        drop={20}
      />
    </g>
  );
}

function Landmarks({ state, plot }: PlotProps) {
  const { left, right, y } = plot;
  const limit = y(STRIP.elasticLimit);
  return (
    <g>
      <path class="limit" d={`M${left} ${limit}H${right}`} />
      <text class="halo" x={left + 6} y={limit - 10}>
        elastic limit {formatQuantity(STRIP.elasticLimit, 'stress', state.system)}
      </text>
      <path class="thin" d={steelLine(plot, plot.mostStrain)} />
    </g>
  );
}

/** From the strip's place to both axes, and its stress: right of it under the limit's line, above that line's words once it yields. */
export function StripReading({ state, plot }: PlotProps) {
  const { stress, leftStretch } = state.values;
  const { left, bottom, x, y } = plot;
  const { strain } = stripPlace(state);
  const [pointX, pointY] = [x(strain), y(stress)];
  const limit = y(STRIP.elasticLimit);
  const isYielding = leftStretch > 0;
  const from = isYielding ? pointX : left; // or it would run through the words on the limit
  const beside = Math.min(bottom - 5, Math.max(pointY + 7, limit + 18));
  return (
    <g>
      <path class="construction" d={`M${from} ${pointY}H${pointX}V${bottom}`} />
      <text
        class="steel"
        x={pointX + (state.narrow ? 12 : 18)}
        y={isYielding ? limit - 26 : beside}
        data-sym="stress"
      >
        {formatQuantity(stress, 'stress', state.system)}
      </text>
    </g>
  );
}

interface StressStrainPlotProps {
  readonly state: State;
  readonly layout: StripLayout;
  /** Whether the strip's stress is read here and not where the start is enlarged. */
  readonly isReadHere: boolean;
}

/** The plot with the strip's place on it. */
export function StressStrainPlot({ state, layout, isReadHere }: StressStrainPlotProps) {
  const plot = wholePlot(layout);
  const { x, y, left, top, bottom } = plot;
  const { strain, stress, leftStretch, gaugeLength, released } = state.values;
  const place = stripPlace(state);
  const isBack = released === 'letGo' || leftStretch > 0;
  const back = `M${x(strain)} ${y(stress)}L${x(leftStretch / gaugeLength)} ${bottom}`;
  return (
    <g>
      <Axes state={state} plot={plot} />
      <text class="note" x={layout.narrow ? 4 : left - 30} y={top - 6}>
        stress, {stressUnit(state.system)}
      </text>
      <text class="note" x={layout.inset.right} y={bottom + 40} text-anchor="end">
        strain, %: stretch ÷ gauge length
      </text>
      <Landmarks state={state} plot={plot} />
      <path class="steel-line" d={steelLine(plot, strain)} />
      {isBack && <path class="hidden-edge" d={back} />}
      {isReadHere && <StripReading state={state} plot={plot} />}
      <circle class="steel-fill" cx={x(place.strain)} cy={y(place.stress)} r={5} />
    </g>
  );
}

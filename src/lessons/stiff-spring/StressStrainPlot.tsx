/**
 * Stress against strain: the straight spring part, the elastic limit, the little that comes after; the strip's place
 * on it, and the way back down when it is let go.
 * Units: SI in the state; drawing units otherwise.
 */

import { workingStress } from '../../core/assumptions.ts';
import { stressAtStrain } from '../../core/elasticity.ts';
import { LevelTicks, UprightTicks } from '../../figures/axis-ticks.tsx';
import { linearScale, ticks } from '../../figures/scale.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { unitLabel } from '../../units/label.ts';
import { STRIP } from './model.ts';
import type { State } from './state.ts';
import type { StripLayout } from './strip-layout.ts';

const MOST_STRAIN = 0.012;
const MOST_STRESS = 1450e6;

interface PlotProps {
  readonly state: State;
  readonly layout: StripLayout;
}

function scales({ plot }: StripLayout) {
  return {
    x: linearScale([0, MOST_STRAIN], [plot.left, plot.right]),
    y: linearScale([0, MOST_STRESS], [plot.bottom, plot.top]),
  };
}

type Scales = ReturnType<typeof scales>;

function Axes({ state, layout, x, y }: PlotProps & Scales) {
  const { left, right, top, bottom } = layout.plot;
  const { system, narrow } = state;
  return (
    <g>
      <path class="axis" d={`M${left} ${top}V${bottom}H${right}`} />
      <UprightTicks ticks={ticks(0, MOST_STRESS, 'stress', system, 4)} x={left} y={y} />
      <text class="note" x={left} y={top - 10} text-anchor={narrow ? 'start' : 'middle'}>
        stress, {unitLabel('stress', system)}
      </text>
      <LevelTicks
        ticks={ticks(0, MOST_STRAIN, 'percent', system, narrow ? 4 : 6)}
        x={x}
        y={bottom}
        drop={20}
      />
      <text class="note" x={right} y={bottom + 40} text-anchor="end">
        strain: stretch for each 100 of gauge length
      </text>
    </g>
  );
}

function Landmarks({ state, layout, x, y }: PlotProps & Scales) {
  const { left, right } = layout.plot;
  const { low, high } = workingStress;
  const limit = y(STRIP.elasticLimit);
  const curve = [0, STRIP.elasticLimit / STRIP.youngsModulus, MOST_STRAIN].map(
    (strain) => `${x(strain)} ${y(stressAtStrain(strain, STRIP))}`,
  );
  return (
    <g>
      <rect
        class="steel-wash"
        x={left}
        y={y(high)}
        width={right - left}
        height={y(low) - y(high)}
      />
      <text class="note halo" x={right - 6} y={(y(low) + y(high)) / 2 + 5} text-anchor="end">
        where small mills work
      </text>
      <path class="limit" d={`M${left} ${limit}H${right}`} />
      <text class="halo" x={state.narrow ? left + 6 : left + 10} y={limit - 8}>
        elastic limit {formatQuantity(STRIP.elasticLimit, 'stress', state.system)}
      </text>
      <path class="thin" d={`M${curve.join('L')}`} />
    </g>
  );
}

/** The plot with the strip's place on it. */
export function StressStrainPlot({ state, layout }: PlotProps) {
  const { x, y } = scales(layout);
  const { strain, stress, leftStretch, gaugeLength, released } = state.values;
  const left = leftStretch / gaugeLength;
  const [pointX, pointY] = released === 'letGo' ? [x(left), y(0)] : [x(strain), y(stress)];
  const walked = [0, Math.min(strain, STRIP.elasticLimit / STRIP.youngsModulus), strain].map(
    (at) => `${x(at)} ${y(stressAtStrain(at, STRIP))}`,
  );
  const returns = released === 'letGo' || leftStretch > 0;
  return (
    <g>
      <Axes state={state} layout={layout} x={x} y={y} />
      <Landmarks state={state} layout={layout} x={x} y={y} />
      <path class="steel-line" d={`M${walked.join('L')}`} />
      {returns && <path class="hidden-edge" d={`M${x(strain)} ${y(stress)}L${x(left)} ${y(0)}`} />}
      {leftStretch > 0 && (
        <text class="halo" x={x(left) + 6} y={y(0) - 8}>
          stays: {formatQuantity(leftStretch, 'stretch', state.system)}
        </text>
      )}
      {released === 'held' && stress > 0 && (
        <>
          <path
            class="construction"
            d={`M${layout.plot.left} ${pointY}H${pointX}V${layout.plot.bottom}`}
          />
          <text class="steel halo" x={pointX + 12} y={pointY - 8} data-sym="stress">
            {formatQuantity(stress, 'stress', state.system)}
          </text>
        </>
      )}
      <circle class="steel-fill" cx={pointX} cy={pointY} r={6} />
    </g>
  );
}

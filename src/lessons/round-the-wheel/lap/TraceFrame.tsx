/**
 * What the trace of a lap is drawn in: the axes, the least yield strength of band steel, the names of the pieces.
 * Units: SI in the state; drawing units otherwise.
 */
import { UprightTicks } from '../../../figures/axis-ticks.tsx';
import { type Scale, type Tick, ticks } from '../../../figures/scale.ts';
import { teller } from '../../../figures/teller.ts';
import { formatFixed } from '../../../units/format-number.ts';
import type { UnitSystem } from '../../../units/kinds.ts';
import { unitLabel } from '../../../units/label.ts';
import { fromSi } from '../../../units/si-value.ts';
import { lapEnds } from '../lap.ts';
import { roundTheWheel } from '../model.ts';
import type { State } from '../state.ts';
import type { LapLayout } from './layout.ts';

/** Where the axis of stress ends, Pa. */
export const MOST = 1200e6;
const say = teller(roundTheWheel);

/** What every part of the trace is drawn from. */
export interface TraceProps {
  readonly state: State;
  readonly layout: LapLayout;
  readonly x: Scale;
  readonly y: Scale;
}

/** Round ticks; pounds per square inch in thousands, or they are too long for a phone. */
function stressTicks(system: UnitSystem): readonly Tick[] {
  const divisor = system === 'us' ? 1000 : 1;
  return ticks(0, MOST, 'stress', system, 4).map(({ value }) => ({
    value,
    text: formatFixed(fromSi(value, 'stress', system) / divisor, 6, true),
  }));
}

/** Axes, the yield strength, and the names of the pieces. */
export function TraceFrame({ state, layout, x, y }: TraceProps) {
  const { left, right, top, bottom, words, pieces } = layout.plot;
  const { slack, idle, cutting } = lapEnds(state.values.strandShare);
  const names = state.narrow
    ? ['slack', 'idle', 'cut', 'drive']
    : ['slack strand', 'idle wheel', 'cutting strand', 'driving wheel'];
  const middles = [slack / 2, (slack + idle) / 2, (idle + cutting) / 2, (cutting + 1) / 2];
  const limit = y(state.values.yieldStrength);
  const unit = `${state.system === 'us' ? '1000 ' : ''}${unitLabel('stress', state.system)}`;
  return (
    <g>
      <text class="note" x={state.narrow ? 4 : left} y={words}>
        outer face, {unit}
      </text>
      <path class="axis" d={`M${left} ${top}V${bottom}H${right}`} />
      <path
        class="grid"
        d={[slack, idle, cutting].map((end) => `M${x(end)} ${top}V${bottom}`).join('')}
      />
      <UprightTicks ticks={stressTicks(state.system)} x={left} y={y} />
      <path class="limit" d={`M${left} ${limit}H${right}`} />
      <text x={left + 8} y={limit - 6}>
        least yield {say(state, 'yieldStrength')}
      </text>
      {middles.map((middle, piece) => (
        <text key={piece} x={x(middle)} y={pieces} text-anchor="middle">
          {names[piece]}
        </text>
      ))}
    </g>
  );
}

/**
 * The stress on the outer face along one lap, with the least yield strength of band steel over it; the place that is
 * followed has a dot on the line and a grip under the axis.
 * Units: SI in the state; drawing units otherwise.
 */
import { UprightTicks } from '../../../figures/axis-ticks.tsx';
import { Handle } from '../../../figures/Handle.tsx';
import { linearScale, type Scale, type Tick, ticks } from '../../../figures/scale.ts';
import { teller } from '../../../figures/teller.ts';
import { formatFixed } from '../../../units/format-number.ts';
import type { UnitSystem } from '../../../units/kinds.ts';
import { unitLabel } from '../../../units/label.ts';
import { fromSi } from '../../../units/si-value.ts';
import { lapEnds } from '../lap.ts';
import { roundTheWheel } from '../model.ts';
import type { State } from '../state.ts';
import type { LapLayout } from './layout.ts';

const MOST = 1200e6; // Pa, where the axis ends
const say = teller(roundTheWheel);

interface PartProps {
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

/** The line of the lap: level in each piece, falling on the driving wheel. */
function lapLine({ values }: State, x: Scale, y: Scale): string {
  const { slackStress, tightStress, edgeBend, strandShare } = values;
  const { slack, idle, log, cutting } = lapEnds(strandShare);
  const [low, high] = [y(slackStress), y(tightStress)];
  const bent = y(slackStress + edgeBend);
  return `M${x(0)} ${low}H${x(slack)}V${bent}H${x(idle)}V${low}H${x(log)}V${high}H${x(cutting)}V${y(tightStress + edgeBend)}L${x(1)} ${bent}`;
}

/** Axes, the yield strength, and the names of the pieces. */
function Frame({ state, layout, x, y }: PartProps) {
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
      <text class="halo" x={left + 8} y={limit - 5}>
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

/** The place that is followed: on the line, and the grip that moves it. */
function Place({ state, layout, x, y }: PartProps) {
  const { bottom, right, words, grip } = layout.plot;
  const { place, stressHere } = state.values;
  return (
    <g>
      <g transform={`translate(${x(place)} 0)`}>
        <path class="construction" d={`M0 ${y(stressHere)}V${bottom}`} />
        <circle class="steel-fill" cy={y(stressHere)} r={layout.loop.dot} />
      </g>
      <text class="steel" x={right} y={words} text-anchor="end" data-sym="stressHere">
        here {say(state, 'stressHere', 3)}
      </text>
      <Handle
        model={roundTheWheel}
        state={state}
        x={x(place)}
        y={grip}
        input="place"
        label="Move along the lap"
        drag="x"
        perUnit={1 / (x(1) - x(0))}
      />
    </g>
  );
}

/** The number at the highest point of the line, left of it, where nothing else is. */
function Peak({ state, x, y }: Omit<PartProps, 'layout'>) {
  const { strandShare, peak } = state.values;
  return (
    <text
      class="steel halo"
      x={x(lapEnds(strandShare).cutting) - 7}
      y={y(peak) + 1}
      text-anchor="end"
      data-sym="peak"
    >
      {say(state, 'peak', 3)}
    </text>
  );
}

/** Frame, line, peak and place. */
export function Trace({ state, layout }: Pick<PartProps, 'state' | 'layout'>) {
  const { left, right, top, bottom } = layout.plot;
  const x = linearScale([0, 1], [left, right]);
  const y = linearScale([0, MOST], [bottom, top]);
  const parts = { state, layout, x, y };
  return (
    <g>
      <Frame {...parts} />
      <path class="steel-line" d={lapLine(state, x, y)} />
      <Peak {...parts} />
      <Place {...parts} />
    </g>
  );
}

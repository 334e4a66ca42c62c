/**
 * The stress on the outer face along one lap; the place that is followed has a dot on the line and a grip under the axis.
 * Units: SI in the state; drawing units otherwise.
 */
import { Handle } from '../../../figures/Handle.tsx';
import { linearScale, type Scale } from '../../../figures/scale.ts';
import { teller } from '../../../figures/teller.ts';
import { lapEnds } from '../lap.ts';
import { roundTheWheel } from '../model.ts';
import type { State } from '../state.ts';
import { MOST, TraceFrame, type TraceProps } from './TraceFrame.tsx';

const say = teller(roundTheWheel);

/** The line of the lap: level in each piece, falling on the driving wheel. */
function lapLine({ values }: State, x: Scale, y: Scale): string {
  const { slackStress, tightStress, edgeBend, strandShare } = values;
  const { slack, idle, log, cutting } = lapEnds(strandShare);
  const [low, high] = [y(slackStress), y(tightStress)];
  const bent = y(slackStress + edgeBend);
  return `M${x(0)} ${low}H${x(slack)}V${bent}H${x(idle)}V${low}H${x(log)}V${high}H${x(cutting)}V${y(tightStress + edgeBend)}L${x(1)} ${bent}`;
}

/** The place that is followed: on the line, and the grip that moves it. */
function Place({ state, layout, x, y }: TraceProps) {
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
function Peak({ state, x, y }: Omit<TraceProps, 'layout'>) {
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
export function Trace({ state, layout }: Pick<TraceProps, 'state' | 'layout'>) {
  const { left, right, top, bottom } = layout.plot;
  const x = linearScale([0, 1], [left, right]);
  const y = linearScale([0, MOST], [bottom, top]);
  const parts = { state, layout, x, y };
  return (
    <g>
      <TraceFrame {...parts} />
      <path class="steel-line" d={lapLine(state, x, y)} />
      <Peak {...parts} />
      <Place {...parts} />
    </g>
  );
}

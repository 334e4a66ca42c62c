/**
 * The dial over torque with three zeros: each is a level, and the measure from there to the last reading.
 * Units: SI in the state; drawing units otherwise.
 */
import { ArrowHead } from '../../../figures/dimension.tsx';
import { DialAxes } from '../DialAxes.tsx';
import { type DialScales, pathThrough } from '../dial-scales.ts';
import type { State } from '../state.ts';
import { TorqueHandle } from '../TorqueHandle.tsx';
import { bandAt } from '../toe/curl.ts';
import { atRest } from '../toe/rest.worked.ts';
import { wrongLayout, wrongScales } from './layout.ts';
import { type ComparedZero, zerosOf } from './zeros.ts';

const STEPS = 60;

interface PartProps {
  readonly state: State;
  readonly scales: DialScales;
}

/** The dial, and the straight line that it comes to. */
function Curve({ state, scales }: PartProps) {
  const { drag, topTorque } = atRest;
  const points = Array.from({ length: STEPS + 1 }, (_, i) => {
    const torque = drag + (topTorque - drag) * (i / STEPS) ** 2;
    return { torque, dial: bandAt(torque, state.values.side).dial };
  });
  const straight = [drag, topTorque].map((torque) => ({
    torque,
    dial: bandAt(torque, state.values.side).stretch,
  }));
  return (
    <g>
      <path class="steel-thin" stroke-dasharray="6 4" d={pathThrough(scales, straight)} />
      <path class="outline" d={pathThrough(scales, points)} />
    </g>
  );
}

interface MeasureProps {
  readonly zero: ComparedZero;
  readonly place: number;
  readonly at: number;
  readonly scales: DialScales;
  readonly topReading: number;
}

/** The level of a zero and the measure from it up to the last reading, with its number above. */
function Measure({ zero, place, at, scales, topReading }: MeasureProps) {
  const { ink, torque, dial } = zero;
  const [level, top] = [scales.y(dial), scales.y(topReading)];
  const isLong = Math.abs(level - top) > 14;
  const thin = ink === 'ink' ? 'thin' : `${ink}-thin`;
  return (
    <g>
      <path class={thin} stroke-dasharray="3 3" d={`M${scales.x(torque)} ${level}H${at + 6}`} />
      <path class={ink === 'ink' ? 'outline' : `${ink}-line`} d={`M${at} ${level}V${top}`} />
      {isLong && <ArrowHead x={at} y={top} angle={level > top ? -90 : 90} ink={ink} />}
      <circle class={`${ink}-fill`} cx={scales.x(torque)} cy={level} r={4} />
      <text class={ink} x={at} y={scales.frame.top - 9} text-anchor="middle">
        {place + 1}
      </text>
    </g>
  );
}

/** The plot with its three measures. */
export function ZerosPlot({ state }: { readonly state: State }) {
  const scales = wrongScales(state.narrow);
  const { measures } = wrongLayout(state.narrow);
  const { setAt, side } = state.values;
  const topReading = bandAt(atRest.topTorque, side).dial;
  const last = measures.at(-1) ?? 0;
  return (
    <g>
      <DialAxes state={state} scales={scales} upright="dial" uprightTicks={4} />
      <Curve state={state} scales={scales} />
      <path class="construction" d={`M${scales.frame.right} ${scales.y(topReading)}H${last + 6}`} />
      {zerosOf(state).map((zero, place) => (
        <Measure
          key={zero.key}
          zero={zero}
          place={place}
          at={measures[place] ?? 0}
          scales={scales}
          topReading={topReading}
        />
      ))}
      <TorqueHandle
        state={state}
        scales={scales}
        input="setAt"
        dial={bandAt(setAt, side).dial}
        label="Move the torque at which the dial is set to zero"
      />
    </g>
  );
}

/** The dial on its bar, between two clamps; its hand turns once in a millimeter, as far as the strip is stretched. */
import { About } from './kit.tsx';
import { PLACES, type RigLayout } from './layout.ts';
import type { RigState } from './state.ts';

const BAR = 0.036; // m over the strip
const FACE = 0.024; // m, half of the dial's face
const TURN = 1e-3; // m of stretch for one turn of the hand
export const CLAMP = 0.012; // m along the strip

/** Clamps, bar, dial with its plunger on the further clamp. */
export function Dial({ state, layout }: { state: RigState; layout: RigLayout }) {
  const { along, side: axis, perMeter } = layout;
  const { gaugeFrom, gaugeTo } = PLACES;
  const [x, y, radius] = [
    along(gaugeTo) - 0.055 * perMeter,
    axis - BAR * perMeter,
    FACE * perMeter,
  ];
  const turn = (2 * Math.PI * state.values.stretch) / TURN;
  const hand = `l${0.8 * radius * Math.sin(turn)} ${-0.8 * radius * Math.cos(turn)}`;
  const clamp = CLAMP * perMeter;
  const [left, right] = [along(gaugeFrom) - clamp, along(gaugeTo)];
  const height = (BAR + 0.02) * perMeter;
  return (
    <g>
      <path class="outline" d={`M${left} ${y - 2}H${x}M${left} ${y + 2}H${x}`} />
      <path class="outline" d={`M${x + radius} ${y}H${right}`} />
      {[left, right].map((edge) => (
        <rect
          key={edge}
          class="outline paper-fill"
          x={edge}
          y={axis - height + 0.008 * perMeter}
          width={clamp}
          height={height}
        />
      ))}
      <circle class="outline paper-fill" cx={x} cy={y} r={radius} />
      <path class="steel-line" d={`M${x} ${y}${hand}`} />
    </g>
  );
}

/** The same from above: the bar and the dial's case over the strip. */
export function DialFromAbove({ layout }: { layout: RigLayout }) {
  const { along, above: axis, perMeter } = layout;
  const { gaugeFrom, gaugeTo } = PLACES;
  const shared = { layout, axis };
  const clamp = CLAMP * perMeter;
  const center = along(gaugeTo) - 0.055 * perMeter;
  const [reach, half] = [FACE * perMeter, 0.008 * perMeter];
  return (
    <g>
      {[along(gaugeFrom) - clamp, along(gaugeTo)].map((edge) => (
        <rect
          key={edge}
          class="outline paper-fill"
          x={edge}
          y={axis - 0.016 * perMeter}
          width={clamp}
          height={0.032 * perMeter}
        />
      ))}
      <About {...shared} from={gaugeFrom} to={gaugeTo - 0.07} top={-0.003} bottom={0.003} />
      <path class="outline" d={`M${center + reach} ${axis}H${along(gaugeTo)}`} />
      <rect
        class="outline paper-fill"
        x={center - reach}
        y={axis - half}
        width={2 * reach}
        height={2 * half}
      />
    </g>
  );
}

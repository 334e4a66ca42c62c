/**
 * Three thermometers that the reader drags: on the band, on the frame, on the wheels.
 * Units: SI in the state; drawing units otherwise.
 */
import { UprightTicks } from '../../../figures/axis-ticks.tsx';
import { Handle } from '../../../figures/Handle.tsx';
import { ticks } from '../../../figures/scale.ts';
import { whenItWarms } from '../model.ts';
import { signedDegrees } from '../signed.ts';
import type { State } from '../state.ts';
import { GLASS, glassScale, type LoopLayout } from './layout.ts';

const PARTS = [
  { part: 'band', input: 'bandNow', label: 'Drag the band’s thermometer' },
  { part: 'frame', input: 'frameNow', label: 'Drag the frame’s thermometer' },
  { part: 'wheels', input: 'wheelsNow', label: 'Drag the wheels’ thermometer' },
] as const;

const HALF = 5; // of the glass
const BULB = 9;

interface PartProps {
  readonly state: State;
  readonly layout: LoopLayout;
}

/** Glass, bulb, column and grip. */
function Thermometer({ state, layout, part, input, label }: PartProps & (typeof PARTS)[number]) {
  const { glass } = layout;
  const y = glassScale(layout);
  const [x, level] = [glass[part], y(state.values[input])];
  const foot = glass.bottom + 4;
  return (
    <g data-sym={input}>
      <rect
        class="thin paper-fill"
        x={x - HALF}
        y={glass.top - 8}
        width={2 * HALF}
        height={foot - glass.top + 8}
      />
      <circle class="hand-line hand-wash" cx={x} cy={foot} r={BULB} />
      <rect
        class="hand-fill"
        x={x - HALF + 2}
        y={level}
        width={2 * HALF - 4}
        height={foot - level}
      />
      <text x={x} y={glass.names} text-anchor="middle">
        {part}
      </text>
      <text class="hand" x={x} y={glass.values} text-anchor="middle">
        {signedDegrees(state.values[input], state.system)}
      </text>
      <Handle
        model={whenItWarms}
        state={state}
        x={x}
        y={level}
        input={input}
        label={label}
        drag="y"
        perUnit={1 / (y(1) - y(0))}
      />
    </g>
  );
}

/** All three on one scale, with the level of the setting. */
export function Thermometers({ state, layout }: PartProps) {
  const { glass } = layout;
  const y = glassScale(layout);
  return (
    <g>
      <path class="construction" d={`M${glass.left} ${y(0)}H${glass.wheels + 24}`} />
      <UprightTicks
        ticks={ticks(GLASS.low, GLASS.high, 'temperatureDifference', state.system, 5)}
        y={y}
        x={glass.left}
      />
      {PARTS.map((one) => (
        <Thermometer key={one.part} state={state} layout={layout} {...one} />
      ))}
    </g>
  );
}

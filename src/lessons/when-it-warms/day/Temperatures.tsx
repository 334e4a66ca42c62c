/**
 * How warm band, frame and wheels are through the day, each curve with its name above the grip that drags it.
 * Units: SI in the state; drawing units otherwise.
 */
import { UprightTicks } from '../../../figures/axis-ticks.tsx';
import { Handle } from '../../../figures/Handle.tsx';
import { ticks } from '../../../figures/scale.ts';
import { unitLabel } from '../../../units/label.ts';
import { whenItWarms } from '../model.ts';
import { signedDegrees } from '../signed.ts';
import type { State } from '../state.ts';
import { day, GRIPS } from './hours.ts';
import { type DayLayout, timeScale, WARMEST, warmthScale } from './layout.ts';

const CURVES = [
  { part: 'frame', input: 'frameWarm', line: 'outline', label: 'Drag the frame’s warmth' },
  { part: 'wheels', input: 'wheelsWarm', line: 'hidden-edge', label: 'Drag the wheels’ warmth' },
  { part: 'band', input: 'bandWarm', line: 'steel-line', label: 'Drag the band’s warmth' },
] as const;

type Curve = (typeof CURVES)[number];

interface PartProps {
  readonly state: State;
  readonly layout: DayLayout;
}

/** A curve, straight from hour to hour. */
function Line({ state, layout, curve }: PartProps & { readonly curve: Curve }) {
  const [x, y] = [timeScale(layout), warmthScale(layout)];
  const points = day(state.values).map(({ at, warmth }) => `${x(at)} ${y(warmth[curve.part])}`);
  return <path class={curve.line} stroke-linejoin="round" d={`M${points.join('L')}`} />;
}

/** Name and value above a grip, with a line down to it. */
function Name({ state, layout, curve }: PartProps & { readonly curve: Curve }) {
  const { names, top } = layout;
  const x = timeScale(layout)(GRIPS[curve.part]);
  const y = warmthScale(layout)(state.values[curve.input]);
  return (
    <g data-sym={curve.input}>
      <path class="construction" d={`M${x} ${top}V${y}`} />
      <text x={x} y={names.y} text-anchor="middle">
        {curve.part}
      </text>
      <text class="hand" x={x} y={names.y + names.drop} text-anchor="middle">
        {signedDegrees(state.values[curve.input], state.system)}
      </text>
    </g>
  );
}

function Grip({ state, layout, curve }: PartProps & { readonly curve: Curve }) {
  const y = warmthScale(layout);
  return (
    <Handle
      model={whenItWarms}
      state={state}
      x={timeScale(layout)(GRIPS[curve.part])}
      y={y(state.values[curve.input])}
      input={curve.input}
      label={curve.label}
      drag="y"
      perUnit={1 / (y(1) - y(0))}
    />
  );
}

/** Axis, curves, names, grips. */
export function Temperatures({ state, layout }: PartProps) {
  const { left, right, top, bottom, names } = layout;
  const y = warmthScale(layout);
  const { low, high } = WARMEST;
  return (
    <g>
      <path class="axis" d={`M${left} ${top}V${bottom}`} />
      <path class="construction" d={`M${left} ${y(0)}H${right}`} />
      <UprightTicks
        ticks={ticks(low, high, 'temperatureDifference', state.system, 4)}
        y={y}
        x={left}
      />
      <text class="note" x={0} y={names.y}>
        {unitLabel('temperatureDifference', state.system)}
      </text>
      {CURVES.map((curve) => (
        <Name key={curve.part} state={state} layout={layout} curve={curve} />
      ))}
      {CURVES.map((curve) => (
        <Line key={curve.part} state={state} layout={layout} curve={curve} />
      ))}
      {CURVES.map((curve) => (
        <Grip key={curve.part} state={state} layout={layout} curve={curve} />
      ))}
    </g>
  );
}

/**
 * The forces on the load as a closed triangle over it: the load downwards, the push of the handle, the thread's reaction
 * along the edge of the cone of friction. The cone's other edge cuts off what it takes to let the load down.
 * Units: SI in the state (pushes as shares of the load); drawing units otherwise.
 */

import { ArrowHead } from '../../../figures/dimension.tsx';
import { ForceArrow } from '../../../figures/ForceArrow.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { State } from '../state.ts';
import { rampPlaces } from './geometry.ts';
import type { RampLayout } from './layout.ts';
import { threadHold } from './thread-hold.ts';

interface PartProps {
  readonly state: State;
  readonly layout: RampLayout;
}

const HOLD_WORDS = {
  firmly: 'straight down is inside: the thread holds',
  barely: 'straight down is barely inside',
  not: 'straight down is outside: it slides back',
} as const;

const WORD = 58; // room for the word of the reaction
const ABOVE = 22; // from the pushes up to their words, past a grip

/** What can be read off the cone, a line each. */
function ConeWords({ state, layout }: PartProps) {
  const { values, system, narrow } = state;
  const say = (angle: number) => formatQuantity(angle, 'angle', system, { digits: 2 });
  const lines = [
    `ramp ${say(values.leadAngle)}, cone of friction ± ${say(values.frictionAngle)}`,
    HOLD_WORDS[threadHold(values)],
  ];
  return (
    <g>
      {lines.map((text, line) => (
        <text key={line} class="halo" x={layout.bar.left} y={14 + line * (narrow ? 17 : 21)}>
          {text}
        </text>
      ))}
    </g>
  );
}

/** What it takes to raise the load and to let it down, on either side of the load's line. */
function PushWords({ state, layout }: PartProps) {
  const { values, system, narrow } = state;
  const { contact, level } = rampPlaces(values, layout);
  const say = (share: number) => formatQuantity(Math.abs(share), 'percent', system, { digits: 2 });
  const back = values.pushDown >= 0 ? 'let down' : 'hold back';
  return (
    <g>
      <text
        class="halo hand"
        x={contact.x - 8}
        y={level - ABOVE}
        text-anchor="end"
        data-sym="pushUp"
      >
        {narrow ? 'raise' : 'push to raise'} {say(values.pushUp)}
      </text>
      <text class="halo" x={contact.x + 8} y={level - ABOVE} data-sym="pushDown">
        {narrow ? back : `push to ${back}`} {say(values.pushDown)}
      </text>
    </g>
  );
}

/** Left of the reaction's arrow, lower on a flat one, so that its word is clear of the cylinder. */
function reactionPlace(push: number, state: State, layout: RampLayout) {
  const { x, y } = rampPlaces(state.values, layout).contact;
  const { load, ramp } = layout;
  const beside = 5 + 6 * Math.max(1, push / load); // from the arrow to the middle of the word's end
  const share = Math.min(0.4, (x - beside - ramp.left - WORD) / push);
  return { x: x - share * push - beside, y: y - share * load + 5 };
}

function Triangle({ state, layout }: PartProps) {
  const { contact, level, up, down } = rampPlaces(state.values, layout);
  const { x, y } = contact;
  const size = layout.narrow ? 9 : 11;
  const edge = (down - x) * (1 - 22 / layout.load); // of the cone, where the word of the load begins
  const lean = (Math.atan2(level - y, up - x) * 180) / Math.PI;
  return (
    <g>
      <path class="outline" d={`M${x} ${level}V${y}L${up} ${level}`} />
      <ArrowHead x={x} y={y} angle={90} size={size} />
      <ArrowHead x={up} y={level} angle={lean} size={size} />
      <ForceArrow x={up} y={level} length={x - up} ink="hand" head={size} />
      <text class="halo" x={x + Math.max(0, edge) + 8} y={level + 32} data-sym="thrust">
        load
      </text>
      <text class="halo" {...reactionPlace(x - up, state, layout)} text-anchor="end">
        reaction
      </text>
    </g>
  );
}

/** Cone, triangle, words. */
export function ForceCone(props: PartProps) {
  const { contact, level, up, free, down } = rampPlaces(props.state.values, props.layout);
  const { x, y } = contact;
  return (
    <g data-sym="threadFriction">
      <path class="hand-wash" d={`M${x} ${y}L${up} ${level}H${down}Z`} />
      <path class="thin" d={`M${x} ${y}L${down} ${level}H${Math.min(x, down)}`} />
      <path class="centre" d={`M${x} ${y}L${free} ${level}`} />
      <Triangle {...props} />
      <PushWords {...props} />
      <ConeWords {...props} />
    </g>
  );
}

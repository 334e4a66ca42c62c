/**
 * The cone of friction on the ramp, about the ramp's normal, with what can be read off it in words.
 * Units: SI in the state; drawing units otherwise.
 */

import { formatQuantity } from '../../../units/format-quantity.ts';
import type { State } from '../state.ts';
import { leaning, rampPlaces } from './geometry.ts';
import type { RampLayout } from './layout.ts';
import { threadHold } from './thread-hold.ts';

const HOLD_WORDS = {
  firmly: 'load inside: it holds',
  barely: 'load inside: only just',
  not: 'load outside: it slides',
} as const;

interface PartProps {
  readonly state: State;
  readonly layout: RampLayout;
}

/** What is to be read off beside the cone, a line each. */
function coneWords({ values, system, narrow }: State): readonly string[] {
  const say = (angle: number) => formatQuantity(angle, 'angle', system, { digits: 2 });
  return [
    ...(narrow ? [`ramp climbs ${say(values.leadAngle)}`] : []),
    `cone of friction ± ${say(values.frictionAngle)}`,
    HOLD_WORDS[threadHold(values)],
  ];
}

/** The cone with its lines of words. */
export function FrictionCone({ state, layout }: PartProps) {
  const { contact, climb, friction } = rampPlaces(state.values, layout);
  const reach = layout.cone;
  const [left, right, axis] = [climb + friction, climb - friction, climb].map((angle) =>
    leaning(contact, angle, reach),
  );
  if (!left || !right || !axis) return null;
  const beside = Math.max(right.x, contact.x) + 12;
  const spacing = layout.narrow ? 17 : 21;
  return (
    <g data-sym="threadFriction">
      <path
        class="hand-wash"
        d={`M${contact.x} ${contact.y}L${left.x} ${left.y}A${reach} ${reach} 0 0 1 ${right.x} ${right.y}Z`}
      />
      <path
        class="thin"
        d={`M${left.x} ${left.y}L${contact.x} ${contact.y}L${right.x} ${right.y}`}
      />
      <path class="centre" d={`M${contact.x} ${contact.y}L${axis.x} ${axis.y}`} />
      {coneWords(state).map((text, line) => (
        <text key={line} class="halo" x={beside} y={right.y + 26 + line * spacing}>
          {text}
        </text>
      ))}
    </g>
  );
}

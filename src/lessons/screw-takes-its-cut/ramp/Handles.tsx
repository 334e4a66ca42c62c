/**
 * The two handles of the ramp: its upper end sets the lead, the edge of the cone sets the friction.
 * Units: SI in the state; drawing units otherwise.
 */

import { Handle } from '../../../figures/Handle.tsx';
import { screwTakesItsCut } from '../model.ts';
import type { State } from '../state.ts';
import { leaning, rampPlaces } from './geometry.ts';
import type { RampLayout } from './layout.ts';

interface PartProps {
  readonly state: State;
  readonly layout: RampLayout;
}

/** How far the edge of the cone moves sideways for a friction of one, at its end. */
function edgePerFriction({ values }: State, { cone }: RampLayout): number {
  const { leadAngle, frictionAngle, wedging } = values;
  return -cone * Math.cos(leadAngle + frictionAngle) * Math.cos(frictionAngle) ** 2 * wedging;
}

/** Both handles. */
export function Handles({ layout, state }: PartProps) {
  const { values } = state;
  const { right, top, contact, climb, friction } = rampPlaces(values, layout);
  const edge = leaning(contact, climb + friction, layout.cone + 4);
  const scale = layout.ramp.base / values.round;
  return (
    <g>
      <Handle
        model={screwTakesItsCut}
        state={state}
        x={right}
        y={top}
        input="lead"
        label="Lift the ramp’s end"
        drag="y"
        perUnit={-1 / scale}
      />
      <Handle
        model={screwTakesItsCut}
        state={state}
        {...edge}
        input="threadFriction"
        label="Spread the cone of friction"
        drag="x"
        perUnit={1 / edgePerFriction(state, layout)}
      />
    </g>
  );
}

/**
 * The two handles of the ramp: its upper end sets the lead, the edge of the cone sets the friction.
 * Units: SI in the state; drawing units otherwise.
 */

import { Handle } from '../../../figures/Handle.tsx';
import { screwTakesItsCut } from '../model.ts';
import type { State } from '../state.ts';
import { rampPlaces } from './geometry.ts';
import type { RampLayout } from './layout.ts';

interface PartProps {
  readonly state: State;
  readonly layout: RampLayout;
}

/** How far the edge of the cone moves sideways for a friction of one. */
function edgePerFriction({ values }: State, layout: RampLayout): number {
  const { pushUp, frictionAngle, wedging } = values;
  const { steeper } = rampPlaces(values, layout);
  return -layout.load * steeper * (1 + pushUp ** 2) * Math.cos(frictionAngle) ** 2 * wedging;
}

/** Both handles. The ramp tilts about its middle, so its end rises by half of what the lead grows. */
export function Handles({ layout, state }: PartProps) {
  const { values } = state;
  const { right, top, up, level, steeper } = rampPlaces(values, layout);
  const risePerLead = (steeper * layout.ramp.base) / values.round / 2;
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
        perUnit={-1 / risePerLead}
      />
      <Handle
        model={screwTakesItsCut}
        state={state}
        x={up}
        y={level}
        input="threadFriction"
        label="Spread the cone of friction"
        drag="x"
        perUnit={1 / edgePerFriction(state, layout)}
      />
    </g>
  );
}

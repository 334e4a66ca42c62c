/**
 * The two handles of the ramp: its upper end sets the lead, the edge of the cone sets the friction.
 * Units: SI in the state; drawing units otherwise.
 */

import type { FigureState } from '../../../figures/figure.ts';
import { Handle } from '../../../figures/Handle.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { screwTakesItsCut } from '../model.ts';
import { leaning, rampPlaces } from './geometry.ts';
import type { RampLayout } from './layout.ts';

interface PartProps {
  readonly state: FigureState;
  readonly layout: RampLayout;
}

/** How far the edge of the cone moves sideways for a friction of one, at its end. */
function edgePerFriction({ values }: FigureState, { cone }: RampLayout): number {
  const { leadAngle = 0, frictionAngle = 0, wedging = 1 } = values;
  return -cone * Math.cos(leadAngle + frictionAngle) * Math.cos(frictionAngle) ** 2 * wedging;
}

/** Both handles. */
export function Handles({ layout, state }: PartProps) {
  const { values, system } = state;
  const { right, top, contact, climb, friction } = rampPlaces(values, layout);
  const edge = leaning(contact, climb + friction, layout.cone + 4);
  const scale = layout.ramp.base / (values['round'] ?? 1);
  const { lead, threadFriction } = screwTakesItsCut.inputs;
  return (
    <g>
      {lead && (
        <Handle
          x={right}
          y={top}
          input="lead"
          label="Lift the ramp’s end"
          value={values['lead'] ?? 0}
          min={lead.min}
          max={lead.max}
          text={formatQuantity(values['lead'] ?? 0, 'length', system)}
          drag="y"
          perUnit={-1 / scale}
        />
      )}
      {threadFriction && (
        <Handle
          {...edge}
          input="threadFriction"
          label="Spread the cone of friction"
          value={values['threadFriction'] ?? 0}
          min={threadFriction.min}
          max={threadFriction.max}
          text={formatQuantity(values['threadFriction'] ?? 0, 'ratio', system)}
          drag="x"
          perUnit={1 / edgePerFriction(state, layout)}
        />
      )}
    </g>
  );
}

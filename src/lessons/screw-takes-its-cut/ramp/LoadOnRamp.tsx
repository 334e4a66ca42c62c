/**
 * The unrolled turn as a ramp with the load standing on it: the push of the handle, the load, the thread's answer at
 * the edge of the cone of friction. Arrows show directions only; the triangle beside it shows sizes.
 * Units: SI in the state; drawing units otherwise.
 */

import { ArrowHead, Dimension } from '../../../figures/dimension.tsx';
import { teller } from '../../../figures/teller.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { screwTakesItsCut } from '../model.ts';
import type { State } from '../state.ts';
import { FrictionCone } from './FrictionCone.tsx';
import { degrees, leaning, rampPlaces } from './geometry.ts';
import { Handles } from './Handles.tsx';
import type { RampLayout } from './layout.ts';
import { UprightDimension } from './UprightDimension.tsx';

const say = teller(screwTakesItsCut);

interface PartProps {
  readonly state: State;
  readonly layout: RampLayout;
}

function Ramp({ state, layout }: PartProps) {
  const { values, system, narrow } = state;
  const { left, y } = layout.ramp;
  const { right, top, climb } = rampPlaces(values, layout);
  return (
    <g>
      <path class="outline shade-fill" d={`M${left} ${y}H${right}V${top}Z`} />
      <Dimension
        from={left}
        to={right}
        y={y + (narrow ? 26 : 34)}
        edge={y}
        text={
          narrow
            ? say(state, 'round')
            : `one turn, unrolled: π × ${say(state, 'meanDiameter')} = ${say(state, 'round')}`
        }
        id="meanDiameter"
      />
      <UprightDimension
        lower={y}
        upper={top}
        x={right + (narrow ? 26 : 30)}
        edge={right + 2}
        text={say(state, 'lead')}
        ink="hand"
        id="lead"
      />
      {!narrow && (
        <text class="halo" x={right - 26} y={top - 8} text-anchor="end" data-sym="leadAngle">
          climbs {formatQuantity(climb, 'angle', system, { digits: 2 })}
        </text>
      )}
    </g>
  );
}

function Block({ layout, state }: PartProps) {
  const { contact, climb } = rampPlaces(state.values, layout);
  const { length, height } = layout.block;
  return (
    <rect
      class="outline"
      x={-length / 2}
      y={-height}
      width={length}
      height={height}
      transform={`translate(${contact.x} ${contact.y}) rotate(${-degrees(climb)})`}
    />
  );
}

function Arrows({ layout, state }: PartProps) {
  const { contact, climb, friction } = rampPlaces(state.values, layout);
  const { length, height } = layout.block;
  const size = layout.narrow ? 9 : 11;
  const face = leaning(leaning(contact, climb, height / 2), climb + Math.PI / 2, length / 2);
  const tail = face.x - (layout.narrow ? 34 : 64);
  const head = contact.y - height / Math.cos(climb) - 4;
  const top = Math.max(layout.highest, contact.y - layout.cone * 1.22);
  const answer = leaning(contact, climb + friction, layout.cone * 0.82);
  return (
    <g>
      <path class="outline" d={`M${contact.x} ${contact.y}L${answer.x} ${answer.y}`} />
      <ArrowHead {...answer} angle={-90 - degrees(climb + friction)} size={size} />
      <path class="outline" d={`M${contact.x} ${top}V${head - 6}`} />
      <ArrowHead x={contact.x} y={head} angle={90} size={size} />
      <text class="halo" x={contact.x + 8} y={top + 12} data-sym="thrust">
        load
      </text>
      <path class="hand-line" d={`M${tail} ${face.y}H${face.x - 8}`} />
      <ArrowHead x={face.x - 2} y={face.y} angle={0} ink="hand" size={size} />
      <text class="halo hand" x={tail - 4} y={face.y + 5} text-anchor="end" data-sym="torque">
        push
      </text>
    </g>
  );
}

/** Ramp, cone, block, arrows, and the two handles. */
export function LoadOnRamp(props: PartProps) {
  return (
    <g>
      <Ramp {...props} />
      <FrictionCone {...props} />
      <Block {...props} />
      <Arrows {...props} />
      <Handles {...props} />
    </g>
  );
}

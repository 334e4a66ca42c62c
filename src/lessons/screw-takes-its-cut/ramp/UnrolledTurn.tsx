/**
 * One turn of the thread unrolled into a ramp: its length, its rise, and the load on it as a block.
 * Units: SI in the state; drawing units otherwise.
 */

import { Dimension } from '../../../figures/dimension.tsx';
import { teller } from '../../../figures/teller.ts';
import { screwTakesItsCut } from '../model.ts';
import type { State } from '../state.ts';
import { rampPlaces } from './geometry.ts';
import type { RampLayout } from './layout.ts';
import { UprightDimension } from './UprightDimension.tsx';

const say = teller(screwTakesItsCut);

interface PartProps {
  readonly state: State;
  readonly layout: RampLayout;
}

function Sizes({ state, layout }: PartProps) {
  const { narrow } = state;
  const { right, top, foot } = rampPlaces(state.values, layout);
  const round = say(state, 'round');
  return (
    <g>
      <Dimension
        from={layout.ramp.left}
        to={right}
        y={foot + (narrow ? 26 : 32)}
        edge={foot}
        text={
          narrow ? `one turn ${round}` : `one turn: π × ${say(state, 'meanDiameter')} = ${round}`
        }
        id="meanDiameter"
      />
      <UprightDimension
        lower={foot}
        upper={top}
        x={right + (narrow ? 24 : 30)}
        edge={right + 2}
        text={`${narrow ? '' : 'lead '}${say(state, 'lead')}`}
        ink="hand"
        id="lead"
      />
    </g>
  );
}

/** The ramp with its sizes and its load. */
export function UnrolledTurn(props: PartProps) {
  const { layout, state } = props;
  const { left } = layout.ramp;
  const { right, top, foot, contact, tilt } = rampPlaces(state.values, layout);
  const { length, height } = layout.block;
  return (
    <g>
      <path class="outline shade-fill" d={`M${left} ${foot}H${right}V${top}Z`} />
      <path class="hand-line" d={`M${left} ${foot}L${right} ${top}`} />
      <rect
        class="outline paper-fill"
        x={-length / 2}
        y={-height}
        width={length}
        height={height}
        transform={`translate(${contact.x} ${contact.y}) rotate(${-tilt})`}
      />
      <Sizes {...props} />
    </g>
  );
}

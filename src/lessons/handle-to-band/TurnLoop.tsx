/**
 * The mill of the handle-to-band figure from its front: fixed wheel, movable wheel where the chain has put it, the
 * band round both, the beam that the screw pushes together, the dial on its bar over the upper strand.
 * Units: drawing units; the stretch in m.
 */

import { Dimension } from '../../figures/dimension.tsx';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { TurnLayout, TurnPartProps, TurnPlaces } from './turn-layout.ts';

const DIAL_TURN = 1e-3; // m of stretch for one turn of the hand

interface GeometryProps {
  readonly layout: TurnLayout;
  readonly places: TurnPlaces;
}

function Wheel({ x, axis, radius }: { readonly x: number; axis: number; radius: number }) {
  return (
    <g>
      <circle class="outline" cx={x} cy={axis} r={radius - 2} />
      <circle class="thin" cx={x} cy={axis} r={radius * 0.86} />
      <path class="centre" d={`M${x} ${axis - radius - 8}V${axis + radius + 8}`} />
    </g>
  );
}

/** The beam behind which the wheels stand; it ends at the plate, and the axle's block slides in its slot. */
function Beam({
  layout: { left, axis, beam },
  places: { wheelAtRest, plate, radius },
}: GeometryProps) {
  const start = left - radius * 0.45;
  const slot = wheelAtRest - beam * 2;
  return (
    <g>
      <rect
        class="outline paper-fill"
        x={start}
        y={axis - beam}
        width={plate - start}
        height={2 * beam}
      />
      <rect
        class="thin"
        x={slot}
        y={axis - beam * 0.6}
        width={plate - beam - slot}
        height={beam * 1.2}
      />
      <circle class="outline" cx={left} cy={axis} r={beam * 0.5} />
    </g>
  );
}

/** Two clamps, the bar, and the dial whose hand turns as far as the real one would. */
function Gauge({ state, layout, places }: TurnPartProps) {
  const { left, axis, scale, narrow } = layout;
  const { wheelAtRest, radius } = places;
  const { stretch, gaugeLength } = state.values;
  const middle = (left + wheelAtRest) / 2;
  const half = (gaugeLength / 2) * scale;
  const strand = axis - radius;
  const [clamp, dial] = narrow ? [4, 9] : [8, 15];
  const bar = strand - clamp * 1.6;
  const centre = { x: middle + half - dial * 0.4, y: bar - dial };
  const hand = (2 * Math.PI * stretch) / DIAL_TURN;
  return (
    <g data-sym="stretch">
      <path class="outline" d={`M${middle - half - clamp} ${bar}H${middle + half}`} />
      {[middle - half - clamp, middle + half].map((x) => (
        <rect
          key={`clamp${x}`}
          class="outline paper-fill"
          x={x}
          y={strand - clamp * 2}
          width={clamp}
          height={clamp * 2.8}
        />
      ))}
      {!narrow && (
        <Dimension
          from={middle - half}
          to={middle + half}
          y={strand + 28}
          edge={strand + clamp}
          text={formatQuantity(gaugeLength, 'length', state.system)}
        />
      )}
      <circle class="outline paper-fill" cx={centre.x} cy={centre.y} r={dial} />
      <path
        class="steel-line"
        d={`M${centre.x} ${centre.y}l${dial * 0.8 * Math.sin(hand)} ${-dial * 0.8 * Math.cos(hand)}`}
      />
    </g>
  );
}

/** Wheels, band, beam and gauge. */
export function TurnLoop(props: TurnPartProps) {
  const { left, axis } = props.layout;
  const { wheel, wheelAtRest, radius } = props.places;
  const arc = `A${radius} ${radius} 0 0 1`;
  const band = `M${left} ${axis - radius}H${wheel}${arc} ${wheel} ${axis + radius}H${left}${arc} ${left} ${axis - radius}Z`;
  return (
    <g>
      <path
        class="hidden-edge"
        d={`M${wheelAtRest} ${axis - radius}${arc} ${wheelAtRest} ${axis + radius}`}
      />
      <Wheel x={left} axis={axis} radius={radius} />
      <Wheel x={wheel} axis={axis} radius={radius} />
      <path class="steel-line" d={band} />
      <Beam layout={props.layout} places={props.places} />
      <Gauge {...props} />
    </g>
  );
}

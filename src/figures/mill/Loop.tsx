/**
 * The head of an invented band mill seen from its frame: two wheels, the band round them, the beam that holds them
 * apart, guides and a log. Sizes to scale; the band's thickness and the beam are not.
 * Units: drawing units; sizes of the mill in m.
 */
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import type { MillLayout } from './layout.ts';

interface PartProps {
  readonly layout: MillLayout;
}

/** A wheel with its rim, spokes left out, and its centre line. */
function Wheel({ x, layout }: { readonly x: number; readonly layout: MillLayout }) {
  const { axis, radius } = layout;
  const reach = radius + 12;
  return (
    <g transform={`translate(${x} ${axis})`}>
      <circle class="outline" r={radius - 2} />
      <circle class="thin" r={radius * 0.86} />
      <path class="centre" d={`M0 ${-reach}V${reach}`} />
    </g>
  );
}

/** The log under the lower strand, with the cut that the band has made in it. */
export function Log({ layout: { middle, axis, radius, scale, narrow } }: PartProps) {
  const size = 0.2 * scale;
  const cut = axis + radius;
  const y = cut + size * 0.45;
  const rings = narrow ? [0.6] : [0.75, 0.5, 0.27];
  return (
    <g>
      <circle class="construction" cx={middle} cy={y} r={size} />
      {rings.map((share) => (
        <circle key={share} class="grid" cx={middle} cy={y} r={size * share} />
      ))}
    </g>
  );
}

/** A guide roller on each side of the cut. */
function Guides({ layout: { middle, axis, radius, scale } }: PartProps) {
  const half = (OTTERSLEIGH.guideSpan / 2) * scale;
  const size = 0.028 * scale;
  return (
    <g>
      {[-half, half].map((offset) => (
        <circle
          key={offset}
          class="outline paper-fill"
          cx={middle + offset}
          cy={axis + radius - size - 1}
          r={size}
        />
      ))}
    </g>
  );
}

/** The beam behind which the wheels stand, the slot for the movable axle, the axle of the fixed wheel. */
function Beam({ layout: { beamStart, plate, axis, beam, left, right } }: PartProps) {
  const slot = { from: right - beam * 2.6, to: plate - beam * 1.4 };
  return (
    <g>
      <rect
        class="outline paper-fill"
        x={beamStart}
        y={axis - beam}
        width={plate - beamStart}
        height={2 * beam}
      />
      <rect
        class="thin"
        x={slot.from}
        y={axis - beam * 0.62}
        width={slot.to - slot.from}
        height={beam * 1.24}
      />
      <circle class="outline" cx={left} cy={axis} r={beam * 0.5} />
      <path class="centre" d={`M${left - beam} ${axis}H${left + beam}`} />
    </g>
  );
}

interface LoopProps extends PartProps {
  /** Where the movable wheel's centre stands now. */
  readonly wheel: number;
}

/** Wheels, band, guides and beam; dashed, how far the movable wheel reached without tension. */
export function Loop({ layout, wheel }: LoopProps) {
  const { left, right, axis, radius } = layout;
  const arc = `A${radius} ${radius} 0 0 1`;
  const band = `M${left} ${axis - radius}H${wheel}${arc} ${wheel} ${axis + radius}H${left}${arc} ${left} ${axis - radius}Z`;
  return (
    <g>
      <path class="hidden-edge" d={`M${right} ${axis - radius}${arc} ${right} ${axis + radius}`} />
      <Wheel x={left} layout={layout} />
      <Wheel x={wheel} layout={layout} />
      <path class="steel-line" d={band} />
      <Guides layout={layout} />
      <Beam layout={layout} />
    </g>
  );
}

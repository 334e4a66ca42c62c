/**
 * The screw of a tensioner where it is on the mill, at the mill's own scale: from the axle's block through the end plate,
 * spring as a rectangle with a cross (the simplified sign of technical drawing), nut.
 * Units: drawing units; sizes and travels in m.
 */
import type { MILLS } from '../mills.worked.ts';
import type { CountingPlaces } from './mill-places.ts';
import { freeLength, springDiameter, tensionerSizes } from './tensioner-sizes.ts';

interface ScrewProps {
  readonly tensioner: keyof typeof MILLS;
  readonly places: CountingPlaces;
  readonly travel: number;
  readonly springTravel: number;
}

interface SpringBoxProps {
  readonly x: number;
  readonly axis: number;
  readonly length: number;
  readonly across: number;
}

function SpringBox({ x, axis, length, across }: SpringBoxProps) {
  return (
    <g data-sym="springTravel">
      <rect class="outline paper-fill" x={x} y={axis - across} width={length} height={2 * across} />
      <path
        class="thin"
        d={`M${x} ${axis - across}l${length} ${2 * across}M${x} ${axis + across}l${length} ${-2 * across}`}
      />
    </g>
  );
}

/** Screw, spring and nut outside the end plate. */
export function ScrewInPlace({ tensioner, places, travel, springTravel }: ScrewProps) {
  const { scale, moved, plate, mill, axis, beam } = places;
  const sizes = tensionerSizes(tensioner);
  const length = (freeLength(mill) - springTravel) * scale;
  const across = Math.max(4, (springDiameter(mill) / 2) * scale);
  const nut = plate + length;
  const thick = Math.max(beam * 0.9, (sizes.bearing + sizes.nut) * scale);
  const high = Math.max(beam, (sizes.nutAcross / 2) * scale);
  const end = nut + thick + (sizes.proud + travel) * scale;
  return (
    <g>
      <path class="outline" d={`M${moved + beam * 1.3} ${axis}H${end}`} />
      {length > 0 && <SpringBox x={plate} axis={axis} length={length} across={across} />}
      <rect
        class="hand-line paper-fill"
        x={nut}
        y={axis - high}
        width={thick}
        height={2 * high}
        data-sym="turns"
      />
    </g>
  );
}

/**
 * The cylinder of the hydraulic mill where it is, inside the loop, at the mill's own scale.
 * Units: drawing units; sizes in m.
 */
import { CYLINDER } from './cylinder-sizes.ts';
import type { CountingPlaces } from './mill-places.ts';

/** Cylinder on the plate inside the loop, and its rod to the axle. */
export function CylinderInPlace({ places }: { readonly places: CountingPlaces }) {
  const { scale, moved, plate, axis, beam } = places;
  const across = Math.max(4, (CYLINDER.bore / 2 + CYLINDER.wall) * scale);
  return (
    <g>
      <path class="outline" d={`M${plate} ${axis}H${moved - beam * 1.3}`} />
      <rect
        class="hand-line paper-fill"
        x={plate}
        y={axis - across}
        width={Math.max(8, (CYLINDER.end + CYLINDER.inside) * scale)}
        height={2 * across}
      />
    </g>
  );
}

/**
 * The band round its two wheels: hanging through, true to scale, while there is slack; then carrying the movable wheel
 * outwards as it stretches, drawn larger.
 * Units: drawing units.
 */
import type { CountingPlaces } from './mill-places.ts';

interface PlacesProps {
  readonly places: CountingPlaces;
}

function Wheel({ x, places: { axis, radius } }: PlacesProps & { readonly x: number }) {
  return (
    <g>
      <circle class="outline paper-fill" cx={x} cy={axis} r={radius - 2} />
      <circle class="thin" cx={x} cy={axis} r={radius * 0.86} />
      <path class="centre" d={`M${x} ${axis - radius - 6}V${axis + radius + 6}`} />
    </g>
  );
}

/** Wheels and band. */
export function SlackLoop({ places }: PlacesProps) {
  const { axis, fixed, moved, unstretched, radius, sag } = places;
  const middle = (fixed + moved) / 2;
  const [top, bottom] = [axis - radius, axis + radius];
  const arc = `A${radius} ${radius} 0 0 1`;
  const strand = (y: number, to: number) => `Q${middle} ${y + 2 * sag} ${to} ${y}`;
  return (
    <g>
      <Wheel x={fixed} places={places} />
      <Wheel x={moved} places={places} />
      <path class="hidden-edge" d={`M${unstretched} ${top}${arc} ${unstretched} ${bottom}`} />
      <path
        class="steel-line"
        d={`M${fixed} ${top}${strand(top, moved)}${arc} ${moved} ${bottom}${strand(bottom, fixed)}${arc} ${fixed} ${top}Z`}
        data-sym="bandTravel"
      />
    </g>
  );
}

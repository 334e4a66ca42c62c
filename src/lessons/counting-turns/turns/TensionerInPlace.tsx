/**
 * The tensioner where it stands on the mill, at the mill's own scale: screw from the axle through the frame's arm, spring
 * as a rectangle with a cross (the simplified sign of technical drawing), nut; or the cylinder inside the loop.
 * Units: drawing units; sizes in m.
 */
import type { CountingPartProps } from './layout.ts';
import { CYLINDER, freeLength, springDiameter, tensionerSizes } from './tensioner-sizes.ts';

/** Screw, spring and nut outside the frame's arm. */
function OnScrew({ state, layout, places }: CountingPartProps) {
  const { tensioner, springTravel, travel } = state.values;
  const { scale, moved, arms, lean, mill } = places;
  const { axis, half } = layout;
  const sizes = tensionerSizes(tensioner);
  const face = arms[1] - lean + half;
  const length = (freeLength(mill) - springTravel) * scale;
  const across = (springDiameter(mill) / 2) * scale;
  const nut = face + length;
  const end = nut + (sizes.bearing + sizes.nut + sizes.proud + travel) * scale;
  const high = Math.max(5, (sizes.nutAcross / 2) * scale);
  return (
    <g>
      <path class="outline" d={`M${moved + half * 0.7} ${axis}H${end}`} />
      {length > 0 && (
        <>
          <rect
            class="outline paper-fill"
            x={face}
            y={axis - across}
            width={length}
            height={2 * across}
          />
          <path
            class="thin"
            d={`M${face} ${axis - across}l${length} ${2 * across}M${face} ${axis + across}l${length} ${-2 * across}`}
          />
        </>
      )}
      <rect
        class="hand-line paper-fill"
        x={nut}
        y={axis - high}
        width={Math.max(5, (sizes.bearing + sizes.nut) * scale)}
        height={2 * high}
      />
    </g>
  );
}

/** Cylinder on the frame's arm and its rod to the axle. */
function OnOil({ layout, places }: CountingPartProps) {
  const { scale, moved, arms, lean } = places;
  const { axis, half } = layout;
  const face = arms[1] - lean + half;
  const across = Math.max(4, (CYLINDER.bore / 2 + CYLINDER.wall) * scale);
  return (
    <g>
      <path class="outline" d={`M${face} ${axis}H${moved - half * 0.7}`} />
      <rect
        class="hand-line paper-fill"
        x={face}
        y={axis - across}
        width={Math.max(8, (CYLINDER.end + CYLINDER.inside) * scale)}
        height={2 * across}
      />
    </g>
  );
}

/** The tensioner on the mill. */
export function TensionerInPlace(props: CountingPartProps) {
  return props.places.mill.cylinder ? <OnOil {...props} /> : <OnScrew {...props} />;
}

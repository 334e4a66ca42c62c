/**
 * The stress in the band as a bar on a scale that begins at nought, and under it what is in use on small mills.
 * Units: Pa; drawing units.
 */
import { workingStress } from '../../core/assumptions.ts';
import { formatRange } from '../../units/format-quantity.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { linearScale } from '../scale.ts';

const END = 220e6; // Pa, where the scale ends
const HEIGHT = 12;

interface StressScaleProps {
  readonly place: { readonly left: number; readonly top: number; readonly width: number };
  readonly stress: number;
  readonly system: UnitSystem;
}

/** The bar in its frame, and the bracket of what is usual. */
export function StressScale({ place, stress, system }: StressScaleProps) {
  const { left, top, width } = place;
  const x = linearScale([0, END], [left, left + width]);
  const [low, high] = [x(workingStress.low), x(workingStress.high)];
  const bottom = top + HEIGHT;
  const usual = formatRange(workingStress.low, workingStress.high, 'stress', system);
  return (
    <g data-sym="stress">
      <rect class="steel-fill" x={left} y={top} width={x(stress) - left} height={HEIGHT} />
      <rect class="thin" x={left} y={top} width={width} height={HEIGHT} />
      <path class="outline" d={`M${low} ${bottom + 3}V${bottom + 10}H${high}V${bottom + 3}`} />
      <text x={(low + high) / 2} y={bottom + 27} text-anchor="middle">
        usual: {usual}
      </text>
    </g>
  );
}

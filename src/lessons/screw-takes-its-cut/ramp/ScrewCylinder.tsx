/**
 * The cylinder at the thread's pitch diameter with the thread wound round it, to the scale of the ramp beside it:
 * one turn stands out, and unrolled it is that ramp. Drawing units.
 */
import type { RampLayout } from './layout.ts';

const POINTS = 24;

/** Half a turn of the helix seen from the side, at the front (rising to the right) or at the back. */
function halfTurn(x: number, start: number, radius: number, rise: number, front: boolean): string {
  const points = Array.from({ length: POINTS + 1 }, (_, place) => {
    const share = place / POINTS;
    const across = radius * Math.cos(Math.PI * share);
    return `${(x + (front ? -across : across)).toFixed(2)} ${(start - share * (rise / 2)).toFixed(2)}`;
  });
  return `M${points.join('L')}`;
}

interface ScrewCylinderProps {
  readonly layout: RampLayout;
  readonly rise: number;
}

/** The cylinder; turns above and below the one that is unrolled are thin. */
export function ScrewCylinder({ layout, rise }: ScrewCylinderProps) {
  const { cylinder, ramp, narrow } = layout;
  const { x, top, bottom } = cylinder;
  const radius = ramp.base / (2 * Math.PI);
  const above = Math.floor((ramp.y - top) / rise);
  const turns = Array.from({ length: above }, (_, turn) =>
    halfTurn(x, ramp.y - turn * rise, radius, rise, true),
  );
  return (
    <g>
      <path class="centre" d={`M${x} ${top - 14}V${bottom + 14}`} />
      <path class="outline" d={`M${x - radius} ${top}V${bottom}M${x + radius} ${top}V${bottom}`} />
      <path
        class="thin"
        d={`M${x - radius} ${top}H${x + radius}M${x - radius} ${bottom}H${x + radius}`}
      />
      <path class="thin" d={turns.join('')} />
      <path class="hand-line" d={halfTurn(x, ramp.y, radius, rise, true)} />
      <path class="hidden-edge" d={halfTurn(x, ramp.y - rise / 2, radius, rise, false)} />
      <path
        class="construction"
        d={`M${x - radius} ${ramp.y}H${ramp.left}M${x - radius} ${ramp.y - rise}H${ramp.left - (narrow ? 2 : 6)}`}
      />
    </g>
  );
}

/**
 * The cylinder at the thread's pitch diameter with the thread wound round it, to the scale of the ramp, which unwinds
 * from it: the blue turn on the cylinder is the ramp's long side. Drawing units.
 */
import type { State } from '../state.ts';
import { rampPlaces } from './geometry.ts';
import type { RampLayout } from './layout.ts';

const POINTS = 24;
const PAST = 12; // from the turn to the ends of the cylinder, at least
const LEAST = 46; // half the height of the cylinder, at least

/** Half a turn of the helix seen from the side, at the front (rising to the right) or at the back. */
function halfTurn(x: number, start: number, radius: number, rise: number, front: boolean): string {
  const points = Array.from({ length: POINTS + 1 }, (_, place) => {
    const share = place / POINTS;
    const across = radius * Math.cos(Math.PI * share);
    return `${(x + (front ? -across : across)).toFixed(1)} ${(start - share * (rise / 2)).toFixed(1)}`;
  });
  return `M${points.join('L')}`;
}

interface ScrewCylinderProps {
  readonly state: State;
  readonly layout: RampLayout;
}

/** The cylinder; the front halves of the turns above and below are thin. */
export function ScrewCylinder({ state, layout }: ScrewCylinderProps) {
  const { left, base, middle } = layout.ramp;
  const { rise, foot, top, right } = rampPlaces(state.values, layout);
  const radius = base / (2 * Math.PI);
  const x = left - radius;
  const half = Math.max(LEAST, rise / 2 + PAST);
  const [head, tail] = [middle - half, middle + half];
  const others = Array.from({ length: Math.ceil((2 * half) / rise) }, (_, place) => place + 1)
    .flatMap((turn) => [foot - rise / 2 - turn * rise, foot - rise / 2 + turn * rise])
    .filter((start) => start - rise / 2 >= head && start <= tail)
    .map((start) => halfTurn(x, start, radius, rise, true));
  return (
    <g>
      <path
        class="outline shade-fill"
        d={`M${x - radius} ${head}H${x + radius}V${tail}H${x - radius}Z`}
      />
      <path class="centre" d={`M${x} ${head - 10}V${tail + 10}`} />
      <path class="thin" d={others.join('')} />
      <path class="hidden-edge" d={halfTurn(x, foot, radius, rise, false)} />
      <path class="hand-line" d={halfTurn(x, foot - rise / 2, radius, rise, true)} />
      <path class="construction" d={`M${left} ${top}H${right}`} />
    </g>
  );
}

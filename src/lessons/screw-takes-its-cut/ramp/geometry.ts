/** Places on the unrolled thread: the ramp, the point where the load stands on it, directions from there. Drawing units. */
import type { State } from '../state.ts';
import type { RampLayout } from './layout.ts';

/** A place of the drawing. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** The ramp at the present lead: its height, its upper end, where the load stands, and the angles in radians. */
export function rampPlaces(
  { leadAngle, frictionAngle }: Pick<State['values'], 'leadAngle' | 'frictionAngle'>,
  { ramp }: RampLayout,
) {
  const rise = ramp.base * Math.tan(leadAngle);
  return {
    rise,
    right: ramp.left + ramp.base,
    top: ramp.y - rise,
    contact: { x: ramp.left + ramp.base / 2, y: ramp.y - rise / 2 },
    climb: leadAngle,
    friction: frictionAngle,
  };
}

/** The place at a distance from another, leaning to the left of upright by an angle. */
export function leaning({ x, y }: Place, angle: number, distance: number): Place {
  return { x: x - distance * Math.sin(angle), y: y - distance * Math.cos(angle) };
}

/** An angle as SVG turns it: degrees clockwise. */
export const degrees = (angle: number): number => (angle * 180) / Math.PI;

/**
 * Places on the unrolled thread: the ramp, the load on it, and the triangle of forces that the cone of friction closes
 * over the load. Slopes and pushes are drawn steeper than they are, all by one factor: what is upright stays inside the
 * cone or outside it, and the ramp's normal stays square to the ramp.
 * Units: SI in the values (pushes are shares of the load); drawing units otherwise.
 */
import type { State } from '../state.ts';
import type { RampLayout } from './layout.ts';

const STEEPER = 3;
const STEEPEST = 0.7; // the drawn slope that the sheet has room for
const LONGEST = 1.1; // the drawn push for a drawn load of one, clear of the cylinder

/** How many times steeper than it is the ramp is drawn; less where the sheet would be too small. */
export function drawnSteeper({ pushFree, pushUp }: Pick<State['values'], 'pushFree' | 'pushUp'>) {
  return Math.min(STEEPER, STEEPEST / pushFree, LONGEST / pushUp);
}

/** The ramp at the present lead, and the four corners that the cone cuts on the level of the load's upper end. */
export function rampPlaces(values: State['values'], { ramp, load }: RampLayout) {
  const { pushFree, pushUp, pushDown } = values;
  const steeper = drawnSteeper(values);
  const slope = steeper * pushFree;
  const rise = ramp.base * slope;
  const contact = { x: ramp.left + ramp.base / 2, y: ramp.middle };
  return {
    steeper,
    rise,
    tilt: (Math.atan(slope) * 180) / Math.PI,
    right: ramp.left + ramp.base,
    top: ramp.middle - rise / 2,
    foot: ramp.middle + rise / 2,
    contact,
    level: contact.y - load,
    up: contact.x - load * steeper * pushUp,
    free: contact.x - load * slope,
    down: contact.x + load * steeper * pushDown,
  };
}

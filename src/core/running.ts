/**
 * The band while it runs and cuts: forces of its strands, and how well it holds on its wheels. The door of what
 * `wheel.ts` itself stands on.
 * Units: SI only (N, m/s, W, rad).
 * Source: named in the file of the room.
 */
export {
  centrifugalForce,
  centrifugalShare,
  maxPower,
  runningStrandForce,
  slipMargin,
  strandsUnderPower,
} from './wheel/running.ts';

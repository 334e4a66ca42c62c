/**
 * The collar or thrust bearing that the screw's thrust bears on: mean diameter and friction torque.
 * Units: SI only (m, N, N·m).
 * Source: uniform wear and uniform pressure on a ring, derived here; `bhandari` example 6.1.
 */
import { assertAtLeast, assertBelow, assertPositive } from '../assert.ts';

/** A ring that rubs. */
export interface CollarRing {
  readonly outerDiameter: number; // m, > 0
  readonly innerDiameter: number; // m, 0 or more, below the outer
}

/**
 * A collar as the screw feels it; a ball thrust bearing has its ball circle and a small friction.
 */
export interface Collar {
  readonly collarFriction: number; // no unit, 0 or more
  readonly collarDiameter: number; // m, mean diameter, 0 or more
}

function assertRing({ outerDiameter, innerDiameter }: CollarRing): void {
  assertPositive('outerDiameter', outerDiameter, 'm');
  assertAtLeast('innerDiameter', innerDiameter, 0, 'm');
  assertBelow('innerDiameter', innerDiameter, outerDiameter, 'm');
}

/** Mean diameter of a worn-in collar, (Do + Di)/2 in m. @throws RangeError unless 0 ≤ Di < Do */
export function wornCollarDiameter(ring: CollarRing): number {
  assertRing(ring);
  return (ring.outerDiameter + ring.innerDiameter) / 2;
}

/**
 * Mean diameter of a new collar, 2(Do³ − Di³)/(3(Do² − Di²)) in m, a little above the worn one.
 * @throws RangeError unless 0 ≤ Di < Do
 */
export function newCollarDiameter(ring: CollarRing): number {
  assertRing(ring);
  const { outerDiameter: outer, innerDiameter: inner } = ring;
  // Do − Di is divided out: a narrow ring would lose digits in the two differences.
  return (2 * (outer * outer + outer * inner + inner * inner)) / (3 * (outer + inner));
}

/**
 * Friction torque of the collar, Q·μc·dc/2 in N·m, 0 or more.
 * @throws RangeError if any part is below 0
 */
export function collarTorque({ collarFriction, collarDiameter }: Collar, thrust: number): number {
  assertAtLeast('collarFriction', collarFriction, 0);
  assertAtLeast('collarDiameter', collarDiameter, 0, 'm');
  assertAtLeast('thrust', thrust, 0, 'N');
  return (thrust * collarFriction * collarDiameter) / 2;
}

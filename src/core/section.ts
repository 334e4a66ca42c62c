/**
 * From stress in the steel to force in one strand to force on the movable wheel.
 * Units: SI only (m, m², Pa, N, rad).
 * Source: `hooke` (definition of stress); equilibrium of the wheel that two strands pull, derived
 * here.
 */
import { assertAtLeast, assertBelow, assertFinite, assertPositive } from './assert.ts';

/** The part of the band that carries load; `width` is the body's, below the gullets. */
export interface BandSection {
  readonly width: number; // m, > 0
  readonly thickness: number; // m, > 0
}

/** Load-bearing section A = w·t in m², > 0. @throws RangeError unless both sizes are above 0 m */
export function sectionArea({ width, thickness }: BandSection): number {
  assertPositive('width', width, 'm');
  assertPositive('thickness', thickness, 'm');
  return width * thickness;
}

/** Force in one strand T = σ·A in N, sign of the stress. @throws RangeError unless area > 0 m² */
export function strandForce(stress: number, area: number): number {
  assertFinite('stress', stress, 'Pa');
  assertPositive('area', area, 'm²');
  return stress * area;
}

/** Stress in one strand σ = T/A in Pa, sign of the force. @throws RangeError unless area > 0 m² */
export function strandStress(strandForce: number, area: number): number {
  assertFinite('strandForce', strandForce, 'N');
  assertPositive('area', area, 'm²');
  return strandForce / area;
}

/**
 * Share of a strand's pull along the line of the wheel centres, cos β, above 0 and at most 1.
 * @throws RangeError unless 0 ≤ β < π/2 rad
 */
export function strandShare(strandHalfAngle: number): number {
  assertAtLeast('strandHalfAngle', strandHalfAngle, 0, 'rad');
  assertBelow('strandHalfAngle', strandHalfAngle, Math.PI / 2, 'rad');
  return Math.cos(strandHalfAngle);
}

/**
 * Force on the movable wheel at rest, Fw = 2T·cos β in N: two strands share the wheel's load.
 * @throws RangeError unless T is finite and 0 ≤ β < π/2 rad
 */
export function wheelForce(strandForce: number, strandHalfAngle = 0): number {
  assertFinite('strandForce', strandForce, 'N');
  return 2 * strandForce * strandShare(strandHalfAngle);
}

/**
 * Force in one strand from the force on the wheel, T = Fw/(2·cos β) in N.
 * @throws RangeError unless Fw is finite and 0 ≤ β < π/2 rad
 */
export function strandForceAtWheel(wheelForce: number, strandHalfAngle = 0): number {
  assertFinite('wheelForce', wheelForce, 'N');
  return wheelForce / (2 * strandShare(strandHalfAngle));
}

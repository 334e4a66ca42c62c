/**
 * The slope and flanks of a screw thread, and what they make of friction.
 * Units: SI only (m, rad); the factors have no unit.
 * Source: a block on an inclined plane wound round a cylinder, derived here; `shigley` 8-2.
 */
import { assertAtLeast, assertBelow, assertPositive } from '../assert.ts';

/** Where and how steep the flanks are. */
export interface ThreadShape {
  readonly meanDiameter: number; // m, > 0, the pitch diameter
  readonly lead: number; // m, > 0, starts × pitch
  readonly halfAngle: number; // rad, half of the thread angle in the axial plane, 0 for square
}

/**
 * Slope of the thread, tan λ = l/(π·d₂), no unit, above 0.
 * @throws RangeError unless meanDiameter and lead are above 0 m
 */
export function leadSlope({ meanDiameter, lead }: Omit<ThreadShape, 'halfAngle'>): number {
  assertPositive('meanDiameter', meanDiameter, 'm');
  assertPositive('lead', lead, 'm');
  return lead / (Math.PI * meanDiameter);
}

/**
 * Lead angle λ = atan(l/(π·d₂)) in rad, between 0 and π/2.
 * @throws RangeError unless meanDiameter and lead are above 0 m
 */
export function leadAngle(shape: Omit<ThreadShape, 'halfAngle'>): number {
  return Math.atan(leadSlope(shape));
}

/** Passes 0 ≤ α < π/2 and returns it. @throws RangeError otherwise */
export function flankHalfAngle({ halfAngle }: Pick<ThreadShape, 'halfAngle'>): number {
  assertAtLeast('halfAngle', halfAngle, 0, 'rad');
  assertBelow('halfAngle', halfAngle, Math.PI / 2, 'rad');
  return halfAngle;
}

/**
 * How much harder the flanks press than a flat would, 1/cos αₙ = √(1 + tan²α·cos²λ), no unit, at least 1; αₙ is the
 * flank half-angle in the plane square to the thread, tan αₙ = tan α·cos λ, at most α.
 * @throws RangeError unless the shape is possible
 */
export function flankFactor(shape: ThreadShape): number {
  return Math.sqrt(1 + Math.tan(flankHalfAngle(shape)) ** 2 / (1 + leadSlope(shape) ** 2));
}

/**
 * Tightening factor (tan λ + μ′)/(1 − μ′·tan λ) of a lead slope tan λ, no unit, above 0.
 * @throws RangeError where μ′·tan λ reaches 1, for there the screw jams
 */
export function raisingFactor(leadSlope: number, effectiveFriction: number): number {
  assertBelow('effectiveFriction', effectiveFriction, 1 / leadSlope);
  return (leadSlope + effectiveFriction) / (1 - effectiveFriction * leadSlope);
}

/**
 * Loosening factor (μ′ − tan λ)/(1 + μ′·tan λ), no unit; negative where the load drives the screw.
 */
export function loweringFactor(leadSlope: number, effectiveFriction: number): number {
  return (effectiveFriction - leadSlope) / (1 + effectiveFriction * leadSlope);
}

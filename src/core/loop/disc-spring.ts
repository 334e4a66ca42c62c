/**
 * Disc ("Belleville") springs: force, stiffness and deflection of one disc.
 * Units: SI only (m, Pa, N, N/m).
 * Source: `disc-springs` (the equation of Almen and Laszlo).
 */

import { assertBelow, assertBetween, assertPositive } from '../assert.ts';
import { discWorkingShare } from '../assumptions.ts';

/** One disc, unloaded. */
export interface DiscSpring {
  readonly outerDiameter: number; // m
  readonly innerDiameter: number; // m, > 0, below the outer
  readonly thickness: number; // m, > 0
  readonly coneHeight: number; // m, > 0, free height less thickness: the travel to flat
  readonly youngsModulus: number; // Pa, > 0
  readonly poissonsRatio: number; // 0 to 0.5
}

/** 4E/(1 − ν²)·t⁴/(K₁·De²): the force that the dimensionless curve is multiplied by, N. */
function forceScale(disc: DiscSpring): number {
  assertPositive('innerDiameter', disc.innerDiameter, 'm');
  assertBelow('innerDiameter', disc.innerDiameter, disc.outerDiameter, 'm');
  assertPositive('thickness', disc.thickness, 'm');
  assertPositive('coneHeight', disc.coneHeight, 'm');
  assertPositive('youngsModulus', disc.youngsModulus, 'Pa');
  assertBetween('poissonsRatio', disc.poissonsRatio, 0, 0.5);
  const ratio = disc.outerDiameter / disc.innerDiameter;
  const bracket = (ratio + 1) / (ratio - 1) - 2 / Math.log(ratio);
  const shapeFactor = ((ratio - 1) / ratio) ** 2 / (Math.PI * bracket);
  const plateModulus = (4 * disc.youngsModulus) / (1 - disc.poissonsRatio ** 2);
  return (plateModulus * disc.thickness ** 4) / (shapeFactor * disc.outerDiameter ** 2);
}

/**
 * Force of one disc pressed by s, 0 or more, in N:
 * F = 4E/(1 − ν²)·t⁴/(K₁·De²)·(s/t)·[(h₀/t − s/t)(h₀/t − s/2t) + 1].
 * @throws RangeError unless the disc is possible and 0 ≤ s ≤ h₀
 */
export function discForce(disc: DiscSpring, deflection: number): number {
  const scale = forceScale(disc);
  assertBetween('deflection', deflection, 0, disc.coneHeight, 'm');
  const cone = disc.coneHeight / disc.thickness;
  const press = deflection / disc.thickness;
  return scale * press * ((cone - press) * (cone - press / 2) + 1);
}

/**
 * Tangent stiffness of one disc, dF/ds in N/m; negative where a steep disc snaps through.
 * @throws RangeError unless the disc is possible and 0 ≤ s ≤ h₀
 */
export function discStiffness(disc: DiscSpring, deflection: number): number {
  const scale = forceScale(disc);
  assertBetween('deflection', deflection, 0, disc.coneHeight, 'm');
  const cone = disc.coneHeight / disc.thickness;
  const press = deflection / disc.thickness;
  return (scale / disc.thickness) * (1.5 * press * press - 3 * cone * press + cone * cone + 1);
}

/**
 * Deflection of one disc under a force, in m, 0 to h₀. About the flat disc the curve is the cubic
 * y³ + P·y + Q with P = 2 − (h₀/t)² above 0, which has one root, found by asinh.
 * @throws RangeError unless h₀/t < √2 (else two deflections share a force) and 0 ≤ F ≤ F(h₀)
 */
export function discDeflection(disc: DiscSpring, force: number): number {
  const scale = forceScale(disc);
  const cone = disc.coneHeight / disc.thickness;
  assertBelow('coneHeight over thickness', cone, Math.SQRT2);
  assertBetween('force', force, 0, discForce(disc, disc.coneHeight), 'N');
  const slope = 2 - cone * cone;
  const offset = 2 * (cone - force / scale);
  const angle = Math.asinh(((1.5 * offset) / slope) * Math.sqrt(3 / slope)) / 3;
  const fromFlat = -2 * Math.sqrt(slope / 3) * Math.sinh(angle);
  // Rounding must not carry the answer past the ends of the travel.
  return Math.min(disc.coneHeight, Math.max(0, cone + fromFlat) * disc.thickness);
}

/**
 * Whether a disc stays within the working share of its cone.
 * @throws RangeError unless coneHeight > 0 m
 */
export function isWithinWorkingShare({ coneHeight }: DiscSpring, deflection: number): boolean {
  assertPositive('coneHeight', coneHeight, 'm');
  return deflection <= discWorkingShare * coneHeight;
}

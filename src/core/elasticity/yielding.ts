/**
 * Steel pulled past its elastic limit, as two straight lines: Hooke up to the limit, then a slope much lower;
 * unloading runs back at Young's modulus and leaves a permanent part.
 * Units: SI (Pa, strain without unit).
 * Source: bilinear idealisation of a stress-strain curve, definition; the limits of hardened band steel are from memory.
 */
import { assertAtLeast, assertBetween, assertPositive } from '../assert.ts';

/** A steel that yields: its modulus, its elastic limit, and the slope beyond as a share of the modulus. */
export interface YieldingSteel {
  readonly youngsModulus: number; // Pa
  readonly elasticLimit: number; // Pa
  readonly hardeningShare: number; // 0 to 1
}

function assertSteel({ youngsModulus, elasticLimit, hardeningShare }: YieldingSteel): void {
  assertPositive('youngsModulus', youngsModulus, 'Pa');
  assertPositive('elasticLimit', elasticLimit, 'Pa');
  assertBetween('hardeningShare', hardeningShare, 0, 1);
}

/** Stress σ in Pa at a total strain ε ≥ 0 on first loading: Eε below the limit, σ_y + hE(ε − σ_y/E) above. @throws RangeError */
export function stressAtStrain(strain: number, steel: YieldingSteel): number {
  assertSteel(steel);
  assertAtLeast('strain', strain, 0);
  const { youngsModulus, elasticLimit, hardeningShare } = steel;
  const limitStrain = elasticLimit / youngsModulus;
  const beyond = Math.max(0, strain - limitStrain);
  return youngsModulus * (Math.min(strain, limitStrain) + hardeningShare * beyond);
}

/** Strain left after letting go from a total strain ε: ε − σ/E, zero below the limit. @throws RangeError */
export function permanentStrain(strain: number, steel: YieldingSteel): number {
  return Math.max(0, strain - stressAtStrain(strain, steel) / steel.youngsModulus);
}

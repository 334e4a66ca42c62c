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

/** Strain past the elastic limit, exactly nought up to it. */
function strainBeyond(strain: number, steel: YieldingSteel): number {
  assertSteel(steel);
  assertAtLeast('strain', strain, 0);
  return Math.max(0, strain - steel.elasticLimit / steel.youngsModulus);
}

/** Stress σ in Pa at a total strain ε ≥ 0 on first loading: Eε below the limit, σ_y + hE(ε − σ_y/E) above. @throws RangeError */
export function stressAtStrain(strain: number, steel: YieldingSteel): number {
  const beyond = strainBeyond(strain, steel);
  const { youngsModulus, elasticLimit, hardeningShare } = steel;
  return youngsModulus * (Math.min(strain, elasticLimit / youngsModulus) + hardeningShare * beyond);
}

/** Strain left after letting go from a total strain ε: ε − σ/E, which is (1 − h)(ε − σ_y/E), and zero below the limit. @throws RangeError */
export function permanentStrain(strain: number, steel: YieldingSteel): number {
  return (1 - steel.hardeningShare) * strainBeyond(strain, steel);
}

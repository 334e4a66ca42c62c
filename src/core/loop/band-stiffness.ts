/**
 * How stiff the band is where the movable wheel feels it: rolled round, not yet rolled, locked.
 * Units: SI only (m, m², Pa, N/m, rad).
 * Source: springs in series, and rim friction after `euler-eytelwein`, derived here.
 */
import { assertAtLeast, assertPositive } from '../assert.ts';
import { strandShare } from '../section.ts';
import type { Wheels } from './geometry.ts';
import { freeStrand, smallerWheelWrap, strandHalfAngle } from './geometry.ts';

/** The band's steel. */
export interface BandSteel {
  readonly youngsModulus: number; // Pa, > 0
  readonly area: number; // m², > 0, the section of one strand
}

/** 4EA·cos²β/length: the wheel moves x, the loop grows 2x·cos β, two strands pull back. */
function stiffnessOver(length: number, steel: BandSteel, strandHalfAngle: number): number {
  assertPositive('youngsModulus', steel.youngsModulus, 'Pa');
  assertPositive('area', steel.area, 'm²');
  return (4 * steel.youngsModulus * steel.area * strandShare(strandHalfAngle) ** 2) / length;
}

/**
 * Stiffness of the whole loop, k_b = 4EA·cos²β/L in N/m, true once the band was rolled round.
 * @throws RangeError unless all sizes are above 0 and 0 ≤ β < π/2 rad
 */
export function bandStiffness(steel: BandSteel, loopLength: number, strandHalfAngle = 0): number {
  assertPositive('loopLength', loopLength, 'm');
  return stiffnessOver(loopLength, steel, strandHalfAngle);
}

/**
 * Stiffness where nothing slips on the wheels, 2EA·cos²β/s in N/m: an upper bound.
 * @throws RangeError unless all sizes are above 0 and 0 ≤ β < π/2 rad
 */
export function bandStiffnessLocked(
  steel: BandSteel,
  freeStrand: number,
  strandHalfAngle = 0,
): number {
  assertPositive('freeStrand', freeStrand, 'm');
  return stiffnessOver(2 * freeStrand, steel, strandHalfAngle);
}

/**
 * Length of wrap that takes part on one wheel, D·(1 − exp(−μθ/2))/μ in m; the arc itself for μ =
 * 0.
 */
function wrapTakingPart(wheelDiameter: number, wrap: number, friction: number): number {
  if (friction === 0) return (wheelDiameter * wrap) / 2;
  return (-wheelDiameter * Math.expm1((-friction * wrap) / 2)) / friction;
}

/**
 * Length of band that takes part before it is rolled round, 2C·cos β + Σ D·(1 − exp(−μθ/2))/μ in m:
 * rim friction keeps the rest of the wrap from its share. Shorter than the loop; for equal wheels
 * it is 2C + 2D·(1 − exp(−μπ/2))/μ. @throws RangeError unless friction ≥ 0 and the wheels fit
 */
export function wrapEffectiveLength(wheels: Wheels, friction: number): number {
  assertAtLeast('friction', friction, 0);
  const smallWrap = smallerWheelWrap(wheels);
  const { wheelDiameter1, wheelDiameter2 } = wheels;
  const small = Math.min(wheelDiameter1, wheelDiameter2);
  const large = Math.max(wheelDiameter1, wheelDiameter2);
  const onSmall = wrapTakingPart(small, smallWrap, friction);
  const onLarge = wrapTakingPart(large, 2 * Math.PI - smallWrap, friction);
  return 2 * freeStrand(wheels) + onSmall + onLarge;
}

/**
 * Stiffness before the band is rolled round, 4EA·cos²β over the length that takes part, in N/m:
 * 5 to 8 % above the rolled one for a rim friction of 0.2 to 0.3.
 * @throws RangeError as `wrapEffectiveLength`, or unless E and A are above 0
 */
export function bandStiffnessBeforeRolling(
  steel: BandSteel,
  wheels: Wheels,
  friction: number,
): number {
  return stiffnessOver(wrapEffectiveLength(wheels, friction), steel, strandHalfAngle(wheels));
}

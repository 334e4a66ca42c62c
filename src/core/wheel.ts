/**
 * What a wheel does to the band that runs round it: bending, centrifugal stress, grip, the forces while it cuts.
 * Units: SI only (m, m/s, kg/m³, N, W, Pa, rad).
 * Source: derived here (bending of a strip to a circle); Shigley, 17-2 (flat belts), from memory; the rest in its files.
 */
import { assertAtLeast, assertPositive } from './assert.ts';

export { tensionRatio } from './wheel/grip.ts';
export { bendsPerHour, peakStress, stressRange, swtLifeRatio } from './wheel/life.ts';
export {
  centrifugalForce,
  centrifugalShare,
  maxPower,
  runningStrandForce,
  slipMargin,
  strandsUnderPower,
} from './wheel/running.ts';
export { edgeBendingFactor, meanBendingFactor, widthParameter } from './wheel/wide-strip.ts';

/** A strip laid round a wheel; `wheelDiameter` is where the band runs: the rim with its tyre. */
export interface WheelBend {
  readonly youngsModulus: number; // Pa, > 0
  readonly thickness: number; // m, > 0
  readonly wheelDiameter: number; // m, > 0
}

/**
 * Bending stress σ_b = E·t/(D + t) in Pa: tension on the outer face, pressure on the inner. The
 * mid-plane runs at (D + t)/2; see `wide-strip.ts` for what the width adds.
 * @throws RangeError unless all three are above 0
 */
export function bendingStress({ youngsModulus, thickness, wheelDiameter }: WheelBend): number {
  assertPositive('youngsModulus', youngsModulus, 'Pa');
  assertPositive('thickness', thickness, 'm');
  assertPositive('wheelDiameter', wheelDiameter, 'm');
  return (youngsModulus * thickness) / (wheelDiameter + thickness);
}

/**
 * Centrifugal stress σ_c = ρ·v² in Pa, at least 0; the wheel's size plays no part.
 * @throws RangeError unless density > 0 kg/m³ and speed ≥ 0 m/s
 */
export function centrifugalStress({
  density,
  speed,
}: {
  readonly density: number; // kg/m³
  readonly speed: number; // m/s
}): number {
  assertPositive('density', density, 'kg/m³');
  assertAtLeast('speed', speed, 0, 'm/s');
  return density * speed ** 2;
}

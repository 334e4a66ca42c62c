/**
 * Strain and stress in a straight strip pulled along its length, below the elastic limit.
 * Units: SI only (m, Pa; strain has no unit).
 * Source: `hooke`; Poisson's ratio by definition. No table value is used here.
 */
import { assertBetween, assertFinite, assertPositive } from './assert.ts';

export {
  dialTravel,
  misalignmentAllowance,
  misalignmentFactor,
} from './elasticity/dial-reading.ts';
export { permanentStrain, stressAtStrain } from './elasticity/yielding.ts';

/** What the dial shows over the marked length; `elongation` may be negative. */
export interface GaugeReading {
  readonly elongation: number; // m
  readonly gaugeLength: number; // m, > 0
}

/** A length of strip under a known stress; `stress` may be negative. */
export interface StressedLength {
  readonly stress: number; // Pa
  readonly youngsModulus: number; // Pa, > 0
  readonly gaugeLength: number; // m, > 0
}

/** A width or thickness that changes because the strip is pulled lengthwise. */
export interface StressedSize {
  readonly stress: number; // Pa
  readonly youngsModulus: number; // Pa, > 0
  readonly poissonsRatio: number; // 0 to 0.5
  readonly size: number; // m, > 0
}

/** Strain ε = ΔL/L₀, no unit, positive in tension. @throws RangeError unless gaugeLength > 0 m */
export function strain({ elongation, gaugeLength }: GaugeReading): number {
  assertFinite('elongation', elongation, 'm');
  assertPositive('gaugeLength', gaugeLength, 'm');
  return elongation / gaugeLength;
}

/** Stress σ = E·ε in Pa, positive in tension. @throws RangeError unless youngsModulus > 0 Pa */
export function stress(reading: GaugeReading, youngsModulus: number): number {
  assertPositive('youngsModulus', youngsModulus, 'Pa');
  return youngsModulus * strain(reading);
}

/**
 * Elongation ΔL = σ·L₀/E in m, positive in tension.
 * @throws RangeError unless E and L₀ are above 0
 */
export function elongation({ stress, youngsModulus, gaugeLength }: StressedLength): number {
  assertFinite('stress', stress, 'Pa');
  assertPositive('youngsModulus', youngsModulus, 'Pa');
  assertPositive('gaugeLength', gaugeLength, 'm');
  return (stress * gaugeLength) / youngsModulus;
}

/**
 * Change of a width or thickness, −ν·(σ/E)·size in m: negative, a thinning, in tension.
 * @throws RangeError unless E and the size are above 0 and ν lies between 0 and 0.5
 */
export function poissonChange(strip: StressedSize): number {
  assertFinite('stress', strip.stress, 'Pa');
  assertPositive('youngsModulus', strip.youngsModulus, 'Pa');
  assertPositive('size', strip.size, 'm');
  assertBetween('poissonsRatio', strip.poissonsRatio, 0, 0.5);
  return -strip.poissonsRatio * (strip.stress / strip.youngsModulus) * strip.size;
}

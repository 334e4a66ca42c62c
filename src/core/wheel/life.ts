/**
 * What tires the band: peak stress, its swing at each wheel, how often, and how life changes with
 * it.
 * Units: SI only (N, m², Pa, m, m/s); ratios have none.
 * Source: derived here; relative life after Basquin and Smith, Watson and Topper: Dowling,
 * Mechanical Behavior of Materials, 9.7, from memory. The exponent (6 to 12, often 9) is an
 * assumption: show ratios, never hours.
 */
import { assertAtLeast, assertBetween, assertPositive } from '../assert.ts';

/** The loaded section as it passes the wheel with the sharpest bend. */
export interface BandLoad {
  readonly tight: number; // N
  readonly area: number; // m²
  readonly bendingStress: number; // Pa, of the smaller wheel, without the factor
  readonly edgeFactor: number; // 1.05 ± 0.05 at the gullets, see `wide-strip.ts`
}

function edgeStress({ tight, area, bendingStress, edgeFactor }: BandLoad): number {
  assertPositive('tight', tight, 'N');
  assertPositive('area', area, 'm²');
  assertPositive('bendingStress', bendingStress, 'Pa');
  assertPositive('edgeFactor', edgeFactor);
  return edgeFactor * bendingStress;
}

/**
 * Peak stress T₁/A + factor·σ_b in Pa, on the outer face.
 * @throws RangeError unless all are above 0
 */
export function peakStress(load: BandLoad): number {
  return edgeStress(load) + load.tight / load.area;
}

/**
 * Swing of the outer face's stress, factor·σ_b + (T₁ − T₂)/A in Pa; the second term comes once a
 * loop.
 * @throws RangeError unless 0 ≤ slack ≤ tight
 */
export function stressRange(load: BandLoad, slack: number): number {
  const bending = edgeStress(load);
  assertBetween('slack', slack, 0, load.tight, 'N');
  return bending + (load.tight - slack) / load.area;
}

/**
 * Bends per hour of any one place on the band, 3600·(number of wheels)·v/L.
 * @throws RangeError unless loopLength > 0 m, speed ≥ 0 m/s, wheels ≥ 1
 */
export function bendsPerHour({
  speed,
  loopLength,
  wheels = 2,
}: {
  readonly speed: number; // m/s
  readonly loopLength: number; // m
  readonly wheels?: number;
}): number {
  assertAtLeast('speed', speed, 0, 'm/s');
  assertPositive('loopLength', loopLength, 'm');
  assertAtLeast('wheels', wheels, 1);
  return (3600 * wheels * speed) / loopLength;
}

/**
 * Life at one stress amplitude over life at another, (σ_a/σ_a,ref)^−m after Basquin; no unit.
 * @throws RangeError unless all are above 0
 */
export function basquinLifeRatio(amplitude: number, reference: number, exponent: number): number {
  assertPositive('amplitude', amplitude, 'Pa');
  assertPositive('reference', reference, 'Pa');
  assertPositive('exponent', exponent);
  return (amplitude / reference) ** -exponent;
}

/** One turn of stress: its peak and half of its swing. */
export interface StressCycle {
  readonly peak: number; // Pa
  readonly amplitude: number; // Pa
}

/**
 * Life of one cycle over life of another after Smith, Watson and Topper,
 * (σ_max·σ_a/(σ_max·σ_a)_ref)^(−m/2); no unit, 1 for equal cycles.
 * @throws RangeError unless all are above 0
 */
export function swtLifeRatio(cycle: StressCycle, reference: StressCycle, exponent: number): number {
  assertPositive('exponent', exponent);
  return (damage(cycle) / damage(reference)) ** (-exponent / 2);
}

function damage({ peak, amplitude }: StressCycle): number {
  assertPositive('peak', peak, 'Pa');
  assertPositive('amplitude', amplitude, 'Pa');
  return peak * amplitude;
}

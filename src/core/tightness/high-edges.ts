/**
 * How much tension is still borne: by the bent steel, by the life that is to be kept, by what the mill's maker allows.
 * Units: SI only (Pa, N, m², rad); factor, share and exponent have none.
 * Source: peak stress as in `wheel/life.ts`; life after Smith, Watson and Topper: Dowling, Mechanical Behavior of
 * Materials, 9.7, from memory, solved for the tension here. Life is a ratio to today's, never hours.
 */
import { assertAtLeast, assertPositive } from '../assert.ts';
import { strandForceAtWheel, strandStress } from '../section.ts';

/** What the band bears beside its tension at rest. */
export interface BentBand {
  readonly bendingStress: number; // Pa, over the smaller wheel, without the factor
  readonly edgeFactor: number; // 1.05 ± 0.05 at the gullets, see `wheel/wide-strip.ts`
  readonly runningRise: number; // Pa, what speed and cut add to the tension, ≥ 0
}

function besideTension({ bendingStress, edgeFactor, runningRise }: BentBand): number {
  assertAtLeast('bendingStress', bendingStress, 0, 'Pa');
  assertPositive('edgeFactor', edgeFactor);
  assertAtLeast('runningRise', runningRise, 0, 'Pa');
  return edgeFactor * bendingStress + runningRise;
}

/**
 * Stress at rest in Pa at which the peak reaches `allowedPeak`; below 0 where bending alone goes beyond it.
 * @throws RangeError unless allowedPeak > 0 Pa, factor > 0, bending and rise ≥ 0
 */
export function stressToPeak(band: BentBand, allowedPeak: number): number {
  assertPositive('allowedPeak', allowedPeak, 'Pa');
  return allowedPeak - besideTension(band);
}

/** The life to be kept, as a part of what today's setting gives. */
export interface LifeWish {
  readonly today: number; // Pa, the stress that is set today
  readonly kept: number; // no unit, > 0: 0.8 for four fifths
  readonly exponent: number; // Basquin's, 6 to 12, an assumption
}

/**
 * Stress at rest in Pa at which life is `kept` times today's: the swing of one band on one mill does not hang on its
 * tension, so life goes as the peak to the power −m/2.
 * @throws RangeError unless all three are above 0, and as `stressToPeak`
 */
export function stressToKeepLife(band: BentBand, { today, kept, exponent }: LifeWish): number {
  assertPositive('today', today, 'Pa');
  assertPositive('kept', kept);
  assertPositive('exponent', exponent);
  const beside = besideTension(band);
  return (today + beside) * kept ** (-2 / exponent) - beside;
}

/**
 * Stress in Pa at which the wheel bears the force that the mill's maker allows.
 * @throws RangeError unless limit > 0 N, area > 0 m², 0 ≤ strandHalfAngle < π/2
 */
export function stressAtWheelLimit(limit: number, area: number, strandHalfAngle = 0): number {
  assertPositive('limit', limit, 'N');
  return strandStress(strandForceAtWheel(limit, strandHalfAngle), area);
}

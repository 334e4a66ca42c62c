/**
 * How little tension still serves: enough to hold the band on its rims, and to keep the teeth in line.
 * Units: SI only (Pa, N, m, m², W, m/s); friction and margin have none.
 * Source: Euler and Eytelwein with inertia, as in Shigley, 17-2 (flat belts), from memory, solved for the tension
 * here; straightness by `span/twist.ts`.
 */
import { assertAtLeast, assertAtMost, assertBetween, assertPositive } from '../assert.ts';
import { rootBetween } from '../root.ts';
import { type TwistedSpan, toothTipCompliance } from '../span/twist.ts';
import { centrifugalForce, type Grip, type MovingBand } from '../wheel/running.ts';
import { tensionRatio } from '../wheel.ts';

/** What the rim must carry. */
export interface GripWish {
  readonly band: MovingBand; // speed above 0
  readonly power: number; // W, ≥ 0
  readonly grip: Grip;
  readonly share: number; // of the centrifugal force that reaches the strands, 0 (rigid) to 1
  readonly area: number; // m²
  readonly margin: number; // least slip margin wanted, ≥ 1
}

/**
 * Stress at rest in Pa at which the margin against slip is just the one wanted,
 * [m·v²(1 − η) + P/(2v)·(exp(μθ) + M)/(exp(μθ) − M)]/A; infinite where no tension could hold.
 * @throws RangeError unless speed and area are above 0, power ≥ 0, margin ≥ 1, 0 ≤ share ≤ 1
 */
export function stressToGrip({ band, power, grip, share, area, margin }: GripWish): number {
  assertPositive('speed', band.speed, 'm/s');
  assertAtLeast('power', power, 0, 'W');
  assertBetween('share', share, 0, 1);
  assertPositive('area', area, 'm²');
  assertAtLeast('margin', margin, 1);
  const ratio = tensionRatio(grip);
  if (ratio <= margin) return Number.POSITIVE_INFINITY;
  const halfPull = power / (2 * band.speed);
  const short = margin / ratio; // so written, a ratio beyond all numbers does no harm
  const pull = (halfPull * (1 + short)) / (1 - short);
  return (pull + (1 - share) * centrifugalForce(band)) / area;
}

/** A push at the teeth, at mid-span of the standing band, and how far it may move them. */
export interface StraightWish extends Omit<TwistedSpan, 'tension'> {
  readonly push: number; // N
  readonly movement: number; // m
}

const leastStress = 1e4; // Pa: under it a slack band is held by its own stiffness alone

/**
 * Stress in Pa at which the push moves the teeth by `movement`; 0 where the steel's own stiffness already holds them.
 * @throws RangeError unless push and movement are above 0, and as `toothTipCompliance`
 */
export function stressToKeepStraight({ push, movement, ...strip }: StraightWish): number {
  assertPositive('push', push, 'N');
  assertPositive('movement', movement, 'm');
  assertAtMost('thickness', strip.thickness, strip.width, 'm');
  const area = strip.width * strip.thickness;
  const excess = (stress: number) =>
    push * toothTipCompliance({ ...strip, tension: stress * area }).total - movement;
  if (excess(leastStress) <= 0) return 0;
  // A string that resists twist by its pull alone is softer than the strip, so it needs more; its rounding gets some room.
  const squareOfGyration = (strip.width ** 2 + strip.thickness ** 2) / 12;
  const softest = 1 + strip.toothOffset ** 2 / squareOfGyration;
  const most = (1.001 * push * strip.span * softest) / (4 * movement * area);
  return rootBetween(excess, leastStress, most);
}

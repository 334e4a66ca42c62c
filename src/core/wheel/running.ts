/**
 * Forces in the strands and on the wheels while the band runs and cuts.
 * Units: SI only (N, N/m, m/s, kg/m, W, rad).
 * Source: derived here; the share η after Mote, J. Franklin Inst. 279 (1965), and Ulsoy, Mote and
 * Szymani, Holz Roh- Werkst. 36 (1978), from memory; grip with inertia as in Shigley, 17-2 (flat
 * belts), from memory.
 */
import { assertAtLeast, assertBelow, assertBetween, assertPositive } from '../assert.ts';
import { strandForceAtWheel, wheelForce as wheelForceAtRest } from '../section.ts';
import { tensionRatio } from './grip.ts';

/** A band in motion; its centrifugal force is m·v². */
export interface MovingBand {
  readonly massPerLength: number; // kg/m, ≥ 0
  readonly speed: number; // m/s, ≥ 0
}

/** Forces of the two strands while power goes into the cut. */
export interface Strands {
  readonly tight: number; // N
  readonly slack: number; // N
}

/** How well the band holds on the wheel with the least wrap. */
export interface Grip {
  readonly friction: number; // of band on rim, no unit, ≥ 0
  readonly wrap: number; // rad, ≥ 0
}

function assertMoving({ massPerLength, speed }: MovingBand): void {
  assertAtLeast('massPerLength', massPerLength, 0, 'kg/m');
  assertAtLeast('speed', speed, 0, 'm/s');
}

/** Centrifugal force m·v² in N, at least 0. @throws RangeError if mass or speed is negative */
export function centrifugalForce(band: MovingBand): number {
  assertMoving(band);
  return band.massPerLength * band.speed ** 2;
}

/**
 * Share of the centrifugal force that reaches the strands, η = k_b/(k_b + k_sup), no unit: 0 with
 * rigid fixed centres (k_sup infinite), 1 under a dead weight or constant pressure (k_sup = 0).
 * @throws RangeError unless bandStiffness > 0 N/m and supportStiffness ≥ 0 N/m
 */
export function centrifugalShare({
  bandStiffness,
  supportStiffness,
}: {
  readonly bandStiffness: number; // N/m
  readonly supportStiffness: number; // N/m, frame and spring in series
}): number {
  assertPositive('bandStiffness', bandStiffness, 'N/m');
  assertBetween('supportStiffness', supportStiffness, 0, Number.POSITIVE_INFINITY, 'N/m');
  return bandStiffness / (bandStiffness + supportStiffness);
}

/**
 * Mean strand force T_run = T_rest + η·m·v² in N.
 * @throws RangeError unless restForce > 0 N, 0 ≤ share ≤ 1
 */
export function runningStrandForce(restForce: number, share: number, band: MovingBand): number {
  assertPositive('restForce', restForce, 'N');
  assertBetween('share', share, 0, 1);
  return restForce + share * centrifugalForce(band);
}

/**
 * Force on the wheel and its bearings, 2(T_run − m·v²)·cos β in N; negative: the band lifts off.
 * @throws RangeError unless 0 ≤ strandHalfAngle < π/2
 */
export function runningWheelForce(
  meanForce: number,
  band: MovingBand,
  strandHalfAngle = 0,
): number {
  assertPositive('meanForce', meanForce, 'N');
  return wheelForceAtRest(meanForce - centrifugalForce(band), strandHalfAngle);
}

/**
 * Tight and slack strand T_run ± P/(2v) in N; their sum is kept by fixed centres and by a constant
 * force alike.
 * @throws RangeError unless speed > 0, power ≥ 0 W, and the slack strand stays above 0 N
 */
export function strandsUnderPower({
  meanForce,
  power,
  speed,
}: {
  readonly meanForce: number; // N
  readonly power: number; // W
  readonly speed: number; // m/s
}): Strands {
  assertPositive('meanForce', meanForce, 'N');
  assertAtLeast('power', power, 0, 'W');
  assertPositive('speed', speed, 'm/s');
  const half = power / (2 * speed);
  assertBelow('half of the pull of the cut', half, meanForce, 'N');
  return { tight: meanForce + half, slack: meanForce - half };
}

/**
 * Tight and slack strand in N where a weight, a long spring or a constant pressure holds the wheel
 * force: F/(2 cos β) + m·v² ± P/(2v).
 * @throws RangeError as `strandsUnderPower`, and unless wheelForce > 0 N
 */
export function strandsConstantForce({
  wheelForce,
  power,
  band,
  strandHalfAngle = 0,
}: {
  readonly wheelForce: number; // N, at rest
  readonly power: number; // W
  readonly band: MovingBand;
  readonly strandHalfAngle?: number; // rad
}): Strands {
  assertPositive('wheelForce', wheelForce, 'N');
  const restForce = strandForceAtWheel(wheelForce, strandHalfAngle);
  return strandsUnderPower({
    meanForce: runningStrandForce(restForce, 1, band),
    power,
    speed: band.speed,
  });
}

/**
 * How far from slipping: exp(μθ)(T₂ − mv²)/(T₁ − mv²), no unit. Below 1 it slips; at 0 or less the
 * slack side lifts off the wheel.
 * @throws RangeError unless the tight strand exceeds both the slack one and m·v²
 */
export function slipMargin({ tight, slack }: Strands, band: MovingBand, grip: Grip): number {
  const lift = centrifugalForce(band);
  assertBetween('slack', slack, 0, tight, 'N');
  assertBelow('centrifugal force', lift, tight, 'N');
  return (tensionRatio(grip) * (slack - lift)) / (tight - lift);
}

/**
 * Power at which the band would slip, 2(T_run − mv²)·v·tanh(μθ/2) in W; far above what a saw cuts
 * with.
 * @throws RangeError unless meanForce exceeds m·v²
 */
export function maxPower(meanForce: number, band: MovingBand, { friction, wrap }: Grip): number {
  assertPositive('meanForce', meanForce, 'N');
  assertAtLeast('friction', friction, 0);
  assertAtLeast('wrap', wrap, 0, 'rad');
  const lift = centrifugalForce(band);
  assertBelow('centrifugal force', lift, meanForce, 'N');
  return 2 * (meanForce - lift) * band.speed * Math.tanh((friction * wrap) / 2);
}

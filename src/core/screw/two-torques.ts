/**
 * What a tightening and a loosening torque at the same load tell of a screw.
 * Units: SI only (m, rad, N, N·m). Torques are above the drag of the empty screw and read while
 * moving; a slide that carries a share of the load spoils both answers.
 * Source: derived here from the exact form of `screw.ts`; no table value is used.
 */
import { assertAtLeast, assertBelow, assertFinite, assertPositive, refuse } from '../assert.ts';
import type { Collar } from './collar.ts';
import type { ThreadShape } from './shape.ts';
import { flankFactor, leadSlope } from './shape.ts';
import type { RubbingThread } from './torque.ts';
import { effectiveFriction } from './torque.ts';

/**
 * One pair of torques at one reading of the dial; a negative loosening torque holds the screw
 * back.
 */
export interface TwoTorques {
  readonly tighteningTorque: number; // N·m, > 0
  readonly looseningTorque: number; // N·m, below the tightening torque
  readonly selfLocking?: boolean; // true: the screw was seen to hold by itself
}

function assertTorques({ tighteningTorque, looseningTorque, selfLocking }: TwoTorques): void {
  assertPositive('tighteningTorque', tighteningTorque, 'N·m');
  assertFinite('looseningTorque', looseningTorque, 'N·m');
  assertBelow('looseningTorque', looseningTorque, tighteningTorque, 'N·m');
  if (selfLocking === true) assertPositive('looseningTorque', looseningTorque, 'N·m');
}

/**
 * Thread friction μ from the two torques, with k = μc·dc/d₂ of a known collar (none by default).
 * With s = (M_up + M_down)/(M_up − M_down) and t = tan λ, μ′ is the smaller root of
 * t(s + k·t)·μ′² − (1 + t²)·μ′ + (s·t − k) = 0, which for k = 0 is sin 2φ = s·sin 2λ. The larger
 * root needs a collar that eats nearly all of the torque, or a μ′ beyond 1.
 * @throws RangeError where no friction of 0 or more gives these torques on this screw
 */
export function frictionFromTwoTorques(
  torques: TwoTorques,
  shape: ThreadShape,
  collar: Collar = { collarFriction: 0, collarDiameter: 0 },
): number {
  assertTorques(torques);
  assertAtLeast('collarFriction', collar.collarFriction, 0);
  assertAtLeast('collarDiameter', collar.collarDiameter, 0, 'm');
  const { tighteningTorque: up, looseningTorque: down } = torques;
  const sumOverDifference = (up + down) / (up - down);
  const slope = leadSlope(shape);
  const collarRatio = (collar.collarFriction * collar.collarDiameter) / shape.meanDiameter;
  const frictionShare = sumOverDifference * slope - collarRatio;
  // A frictionless screw's share is 0 and may come out a rounding below it.
  const flat = Math.abs(frictionShare) < 1e-12 ? 0 : frictionShare;
  const square = slope * (sumOverDifference + collarRatio * slope);
  const linear = 1 + slope * slope;
  const discriminant = linear * linear - 4 * square * flat;
  if (flat < 0 || discriminant < 0)
    refuse('looseningTorque', 'what this screw and collar can give', 'N·m', down);
  return (2 * flat) / (linear + Math.sqrt(discriminant)) / flankFactor(shape);
}

/**
 * Thrust Q = π(M_up − M_down)/l × (1 − μ′²·tan²λ)/(1 + μ′²) in N; collar and drag cancel.
 * @throws RangeError for impossible torques, shape or friction
 */
export function thrustFromTwoTorques(torques: TwoTorques, thread: RubbingThread): number {
  const friction = effectiveFriction(thread);
  const slope = leadSlope(thread);
  assertBelow('effectiveFriction', friction, 1 / slope);
  const correction = (1 - (friction * slope) ** 2) / (1 + friction * friction);
  return thrustEstimateFromTwoTorques(torques, thread.lead) * correction;
}

/**
 * Thrust without knowing any friction, π(M_up − M_down)/l in N: 1.5 to 3 % high on a mill's screw.
 * @throws RangeError for impossible torques, or unless lead > 0 m
 */
export function thrustEstimateFromTwoTorques(torques: TwoTorques, lead: number): number {
  assertTorques(torques);
  assertPositive('lead', lead, 'm');
  return (Math.PI * (torques.tighteningTorque - torques.looseningTorque)) / lead;
}

/**
 * Efficiency at once, (M_up − M_down)/(2·M_up), no unit, a little high.
 * @throws RangeError for impossible torques
 */
export function efficiencyFromTwoTorques(torques: TwoTorques): number {
  assertTorques(torques);
  const { tighteningTorque: up, looseningTorque: down } = torques;
  return (up - down) / (2 * up);
}

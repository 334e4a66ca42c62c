/**
 * Everything together: torque on the handle to force on the wheel to stress in the band, and back.
 * Units: SI only (N·m, N, m, m², Pa, rad). `advantage` is wheel force over screw thrust.
 * Source: M = M_d + Fw·l/(2π·e·adv), energy put in by one turn, derived here.
 */
import { assertAtLeast, assertPositive } from '../assert.ts';
import { strandForce, strandForceAtWheel, strandStress, wheelForce } from '../section.ts';

/** A screw with its drag and what stands between it and the wheel. */
export interface Tensioner {
  readonly lead: number; // m, > 0
  readonly efficiency: number; // > 0, Q·l/(2π·M) above drag; above 1 only where readings contradict
  readonly dragTorque: number; // N·m, 0 or more: what turns the screw with the band slack
  readonly advantage?: number; // wheel force / screw thrust, > 0, 1 for a screw in line
}

/** What the tensioner needs to know of a band. */
export interface TensionedBand {
  readonly area: number; // m², > 0, the section of one strand
  readonly strandHalfAngle?: number; // rad, 0 for equal wheels
}

/** Wheel force per torque above drag, 2π·e·adv/l in 1/m. */
function forcePerTorque({
  lead,
  efficiency,
  advantage = 1,
}: Omit<Tensioner, 'dragTorque'>): number {
  assertPositive('lead', lead, 'm');
  assertPositive('efficiency', efficiency);
  assertPositive('advantage', advantage);
  return (2 * Math.PI * efficiency * advantage) / lead;
}

/**
 * Torque that holds a wheel force, M = M_d + Fw·l/(2π·e·adv) in N·m.
 * @throws RangeError unless the tensioner is possible and the force at least 0 N
 */
export function torqueForWheelForce(tensioner: Tensioner, force: number): number {
  assertAtLeast('dragTorque', tensioner.dragTorque, 0, 'N·m');
  assertAtLeast('wheelForce', force, 0, 'N');
  return tensioner.dragTorque + force / forcePerTorque(tensioner);
}

/**
 * Wheel force that a torque gives, Fw = 2π·e·adv·(M − M_d)/l in N; 0 up to the drag torque.
 * @throws RangeError unless the tensioner is possible and the torque at least 0 N·m
 */
export function wheelForceFromTorque(tensioner: Tensioner, torque: number): number {
  assertAtLeast('dragTorque', tensioner.dragTorque, 0, 'N·m');
  assertAtLeast('torque', torque, 0, 'N·m');
  return Math.max(0, torque - tensioner.dragTorque) * forcePerTorque(tensioner);
}

/**
 * Torque for a stress in any band on this mill, M = M_d + σ·l·A·cos β/(π·adv·e) in N·m.
 * @throws RangeError unless tensioner and band are possible and the stress is at least 0 Pa
 */
export function torqueForStress(tensioner: Tensioner, band: TensionedBand, stress: number): number {
  assertAtLeast('stress', stress, 0, 'Pa');
  const pull = wheelForce(strandForce(stress, band.area), band.strandHalfAngle);
  return torqueForWheelForce(tensioner, pull);
}

/**
 * Stress that a torque should give, σ = adv·π·e·(M − M_d)/(l·A·cos β) in Pa; 0 up to the drag.
 * @throws RangeError unless tensioner and band are possible and the torque is at least 0 N·m
 */
export function stressFromTorque(
  tensioner: Tensioner,
  band: TensionedBand,
  torque: number,
): number {
  const pull = strandForceAtWheel(wheelForceFromTorque(tensioner, torque), band.strandHalfAngle);
  return strandStress(pull, band.area);
}

/**
 * The screw's own efficiency from the measured slope of stress against torque,
 * e = slope·l·A·cos β/(π·adv), no unit; above 1 where the inputs contradict each other.
 * @throws RangeError unless slope, lead, area and advantage are above 0
 */
export function efficiencyFromSlope(
  measured: TensionedBand & Pick<Tensioner, 'lead' | 'advantage'> & { slope: number }, // Pa per N·m
): number {
  assertPositive('slope', measured.slope, 'Pa/(N·m)');
  const forcePerTorqueMeasured = wheelForce(
    strandForce(measured.slope, measured.area),
    measured.strandHalfAngle,
  );
  return forcePerTorqueMeasured / forcePerTorque({ ...measured, efficiency: 1 });
}

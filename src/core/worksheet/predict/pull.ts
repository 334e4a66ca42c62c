/**
 * From the load on screw or cylinder to the stress in the band, and back: σ = adv·k·e·(x − x₀)/(s·A), with k the thrust
 * of a unit of load and s the strands that share the pull, 2·cos β of a band on wheels, 1 of a single strip.
 * Units: SI only (N, m², Pa, rad; a load is N·m or Pa).
 * Source: thrust is in proportion to what the load has above that which moves the empty screw or cylinder; derived here.
 */
import { strandForce, strandForceAtWheel, wheelForce } from '../../section.ts';
import { type Drive, thrustPerLoad } from './drive.ts';
import type { StrandsResult } from './section.ts';

/** What lies between a load and the stress it gives. */
export interface Pull extends StrandsResult {
  readonly advantage: number;
  readonly efficiency: number; // above 1 only where readings contradict
  readonly dragTorque: number; // N·m or Pa: what moves the empty screw or cylinder
  readonly drive: Drive;
  readonly area: number; // m²
}

/** Force on wheel or clamp from that in one strand, N. */
export const pullOf = (force: number, { strandCount, strandHalfAngle }: StrandsResult): number =>
  strandCount === 1 ? force : wheelForce(force, strandHalfAngle);

/** Force in one strand from that on wheel or clamp, N. */
export const strandOf = (pull: number, { strandCount, strandHalfAngle }: StrandsResult): number =>
  strandCount === 1 ? pull : strandForceAtWheel(pull, strandHalfAngle);

/** Force in one strand for a unit of load above that of the empty screw or cylinder, were nothing lost; N per load. */
export const idealPull = (chain: Pick<Pull, 'advantage' | 'drive'> & StrandsResult): number =>
  strandOf(chain.advantage * thrustPerLoad(chain.drive), chain);

/** Load for a stress, x = x₀ + σ·s·A/(adv·k·e). */
export const loadForStress = (pull: Pull, stress: number): number =>
  pull.dragTorque + strandForce(stress, pull.area) / (pull.efficiency * idealPull(pull));

/** Share of the load that arrives, from the slope of stress against load. */
export const efficiencyOfSlope = (
  slope: number,
  pull: Omit<Pull, 'dragTorque' | 'efficiency'>,
): number => strandForce(slope, pull.area) / idealPull(pull);

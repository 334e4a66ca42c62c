/**
 * Turns of the screw against force at the wheel: band, frame and spring are springs in series.
 * Units: SI only (m, N, N/m; turns have no unit). `advantage` is wheel force over screw thrust.
 * Source: springs in series, `shigley` 4-1 and 8-4.
 */

import { assertAtLeast, assertFinite, assertPositive, refuse } from './assert.ts';
import { coverage } from './assumptions.ts';

/** How the screw moves the wheel. */
export interface ScrewDrive {
  readonly lead: number; // m per turn, > 0
  readonly advantage?: number; // wheel force / screw thrust, > 0, 1 for a screw in line
}

/** Turns counted between two loads; never the first turns, which take up slack. */
export interface TurnsReading extends ScrewDrive {
  readonly turns: number; // > 0
  readonly wheelForce: number; // N, the difference between the two loads, > 0
}

/**
 * Stiffness in a row, 1/Σ(1/k) in N/m, below the softest.
 * @throws RangeError if there is none or one is not above 0
 */
export function seriesStiffness(stiffnesses: readonly number[]): number {
  if (stiffnesses.length === 0) refuse('stiffnesses', 'at least one', '', 'none');
  let compliance = 0;
  for (const stiffness of stiffnesses) {
    assertPositive('stiffness', stiffness, 'N/m');
    compliance += 1 / stiffness;
  }
  return 1 / compliance;
}

/** Travel of the wheel for one turn, l/adv in m. @throws RangeError unless both are above 0 */
export function wheelTravelPerTurn({ lead, advantage = 1 }: ScrewDrive): number {
  assertPositive('lead', lead, 'm');
  assertPositive('advantage', advantage);
  return lead / advantage;
}

/**
 * Turns that bring a force to the wheel, n = adv·Fw/(k·l), plus the turns that only take up slack.
 * @throws RangeError unless drive and stiffness are above 0, force and slack at least 0
 */
export function turnsForForce(
  drive: ScrewDrive & { wheelForce: number; stiffness: number; slackTurns?: number },
): number {
  const { wheelForce, stiffness, slackTurns = 0 } = drive;
  assertAtLeast('wheelForce', wheelForce, 0, 'N');
  assertPositive('stiffness', stiffness, 'N/m');
  assertAtLeast('slackTurns', slackTurns, 0);
  return wheelForce / (stiffness * wheelTravelPerTurn(drive)) + slackTurns;
}

/**
 * Stiffness of everything together from counted turns, k = adv·Fw/(n·l) in N/m, above 0.
 * @throws RangeError unless turns, force, lead and advantage are above 0
 */
export function totalStiffness(reading: TurnsReading): number {
  assertPositive('turns', reading.turns);
  assertPositive('wheelForce', reading.wheelForce, 'N');
  return reading.wheelForce / (reading.turns * wheelTravelPerTurn(reading));
}

/**
 * Give of the frame, 1/k_f = n·l/(adv·Fw) − 1/k_b − 1/k_s in m/N. Negative: fewer turns than the
 * band (and spring) alone needs, so a flat was missed or the band was not yet rolled round.
 * @throws RangeError as `totalStiffness`, or unless the other stiffnesses are above 0
 */
export function frameCompliance(
  reading: TurnsReading,
  others: { bandStiffness: number; springStiffness?: number },
): number {
  const { bandStiffness, springStiffness } = others;
  const known = springStiffness === undefined ? [bandStiffness] : [bandStiffness, springStiffness];
  return 1 / totalStiffness(reading) - 1 / seriesStiffness(known);
}

/**
 * Frame stiffness k_f in N/m, the inverse of `frameCompliance`, with its sign.
 * @throws RangeError as it does
 */
export function frameStiffness(
  reading: TurnsReading,
  others: { bandStiffness: number; springStiffness?: number },
): number {
  return 1 / frameCompliance(reading, others);
}

/**
 * Whether turns can show the frame at all: its give must exceed twice the standard uncertainty
 * of the total give. @throws RangeError unless the compliance is finite and the uncertainty ≥ 0 m/N
 */
export function isFrameResolved(compliance: number, standardUncertainty: number): boolean {
  assertFinite('compliance', compliance, 'm/N');
  assertAtLeast('standardUncertainty', standardUncertainty, 0, 'm/N');
  return compliance > coverage.factor * standardUncertainty;
}

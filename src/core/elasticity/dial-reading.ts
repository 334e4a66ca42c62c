/**
 * From what the dial shows to what the band stretched.
 * Units: SI only (m, rad).
 * Source: definition; misalignment derived here (strain along a line tilted to the pull).
 */
import { assertBetween, assertFinite, assertPositive } from '../assert.ts';

/** One look at the dial; whole turns of the hand are counted since the first reading. */
export interface DialReading {
  readonly first: number; // m, shown at the first reading
  readonly shown: number; // m, shown now
  readonly wholeTurns: number; // in the way that the stretch drives the hand
  readonly travelPerTurn: number; // m
  readonly runsBackwards: boolean; // true where the shown number falls as the band stretches
}

/**
 * Travel of the dial since the first reading in m, positive as the band stretches: the change
 * shown, in the running direction, plus whole turns.
 * @throws RangeError unless travelPerTurn > 0 m
 */
export function dialTravel(reading: DialReading): number {
  const { first, shown, wholeTurns, travelPerTurn, runsBackwards } = reading;
  assertFinite('first', first, 'm');
  assertFinite('shown', shown, 'm');
  assertFinite('wholeTurns', wholeTurns, 'turns');
  assertPositive('travelPerTurn', travelPerTurn, 'm');
  const change = runsBackwards ? first - shown : shown - first;
  return change + wholeTurns * travelPerTurn;
}

/**
 * Share of the band's strain that a bar tilted by `angle` reads, cos²θ − ν·sin²θ; no unit, at most
 * 1.
 * @throws RangeError unless −π/2 ≤ angle ≤ π/2 rad and 0 ≤ ν ≤ 0.5
 */
export function misalignmentFactor(angle: number, poissonsRatio: number): number {
  assertBetween('angle', angle, -Math.PI / 2, Math.PI / 2, 'rad');
  assertBetween('poissonsRatio', poissonsRatio, 0, 0.5);
  return 1 - (1 + poissonsRatio) * Math.sin(angle) ** 2;
}

/**
 * What to allow for a tilt up to the largest that nobody would notice: half of the loss there as a
 * factor 1 − (1 + ν)·sin²θ/2, and as much again as half-width of a rectangle; no unit.
 * @throws RangeError as `misalignmentFactor`
 */
export function misalignmentAllowance(
  largestAngle: number,
  poissonsRatio: number,
): { readonly factor: number; readonly halfWidth: number } {
  const halfWidth = (1 - misalignmentFactor(largestAngle, poissonsRatio)) / 2;
  return { factor: 1 - halfWidth, halfWidth };
}

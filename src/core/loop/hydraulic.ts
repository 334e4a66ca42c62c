/**
 * A hydraulic tensioner: pressure on a piston, less or more the friction of its seal.
 * Units: SI only (m, m², Pa, N).
 * Source: definition of pressure; the seal's friction is the caller's figure.
 */
import { assertAtLeast, assertPositive } from '../assert.ts';

/** The cylinder; `sealFriction` opposes whichever way the piston last moved. */
export interface Cylinder {
  readonly bore: number; // m, > 0
  readonly sealFriction: number; // N, 0 or more
}

/** Which way the piston last moved. */
export type Stroke = 'pumping' | 'lettingDown';

/** Piston area π·Dp²/4 in m². @throws RangeError unless bore > 0 m */
export function pistonArea({ bore }: Pick<Cylinder, 'bore'>): number {
  assertPositive('bore', bore, 'm');
  return (Math.PI * bore * bore) / 4;
}

function strokeFriction({ sealFriction }: Cylinder, stroke: Stroke): number {
  assertAtLeast('sealFriction', sealFriction, 0, 'N');
  return stroke === 'pumping' ? sealFriction : -sealFriction;
}

/**
 * Thrust p·A_p − F_seal while pumping, p·A_p + F_seal while letting down, in N; 0 while the
 * pressure has not yet overcome the seal. @throws RangeError unless pressure ≥ 0 Pa
 */
export function hydraulicThrust(cylinder: Cylinder, pressure: number, stroke: Stroke): number {
  assertAtLeast('pressure', pressure, 0, 'Pa');
  return Math.max(0, pressure * pistonArea(cylinder) - strokeFriction(cylinder, stroke));
}

/**
 * Pressure for a thrust, (Q ± F_seal)/A_p in Pa, never below 0.
 * @throws RangeError unless thrust ≥ 0 N
 */
export function pressureForThrust(cylinder: Cylinder, thrust: number, stroke: Stroke): number {
  assertAtLeast('thrust', thrust, 0, 'N');
  return Math.max(0, (thrust + strokeFriction(cylinder, stroke)) / pistonArea(cylinder));
}

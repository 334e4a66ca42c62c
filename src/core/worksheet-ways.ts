/** Ways. */
import type { Outcome } from './worksheet-outcome.ts';

/** The stress a named way gives, with its 95 % interval. */
export interface WayStress {
  readonly stress: number; // Pa
  readonly standardUncertainty: number; // Pa
  readonly low: number; // Pa
  readonly high: number; // Pa
  readonly stretch: number; // m from zero
}

/** One named way of setting: by the straight line at its torque, and by its own readings minus the zero. */
export interface WayResult {
  readonly name: string;
  readonly fromTorque: Outcome<WayStress>;
  readonly fromReadings: Outcome<WayStress & { readonly readings: number }>;
}

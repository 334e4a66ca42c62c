/**
 * A band that keeps the curve of its coil: how far its clamps are from where a straight band without tension holds them.
 * Units: SI.
 * Source: Hooke's law (core/elasticity); the curve is made to die as on the practice bench (core/bench).
 */
import { elongation } from '../../../core/elasticity.ts';
import { atRest } from './rest.worked.ts';

/** On which side of the curled band the bar is clamped. */
export type Side = 'hollow' | 'outer';

/** What has happened to the band at a torque that was reached while tightening. */
export interface BandAtTorque {
  readonly stress: number; // Pa
  readonly stretch: number; // m
  readonly curlLeft: number; // share of the curve, 1 while slack
  readonly toe: number; // m, what the rest of the curve does to the dial
  readonly dial: number; // m, counted from a straight band without tension
}

/** The band at a torque, N·m; below the no-load torque it is slack. */
export function bandAt(torque: number, side: Side): BandAtTorque {
  const { stressPerTorque, drag, shift, dyingStress, youngsModulus, gaugeLength } = atRest;
  const stress = stressPerTorque * Math.max(0, torque - drag);
  const stretch = elongation({ stress, youngsModulus, gaugeLength });
  const curlLeft = Math.exp(-stress / dyingStress);
  const toe = (side === 'hollow' ? -shift : shift) * curlLeft;
  return { stress, stretch, curlLeft, toe, dial: stretch + toe };
}

/**
 * Thread forms: flank angle and pitch diameter of the basic profile.
 * Units: SI only (m, rad).
 * Source: `thread-standards-metric` and `thread-standards-inch` (60° V; Acme), `iso-2901`
 * (trapezoidal); definition (square).
 */
import { assertBelow, assertPositive } from '../assert.ts';

/** The shape of the ridge; `v60` is every metric or Unified thread. */
export type ThreadForm = 'square' | 'acme' | 'trapezoidal' | 'v60';

/** The two measures that fix a thread of a known form. */
export interface ThreadSize {
  readonly majorDiameter: number; // m, > 0
  readonly pitch: number; // m, > 0, below half of the diameter
}

const degree = Math.PI / 180;

/** Half of the thread angle, rad: square 0, Acme 14.5°, trapezoidal 15°, V threads 30°. */
export const threadHalfAngle: Readonly<Record<ThreadForm, number>> = {
  square: 0,
  acme: 14.5 * degree,
  trapezoidal: 15 * degree,
  v60: 30 * degree,
};

/** Passes a size that a screw can have. @throws RangeError unless 0 < pitch < majorDiameter/2 */
export function assertThreadSize({ majorDiameter, pitch }: ThreadSize): void {
  assertPositive('majorDiameter', majorDiameter, 'm');
  assertPositive('pitch', pitch, 'm');
  assertBelow('pitch', pitch, majorDiameter / 2, 'm');
}

/** Height of the sharp 60° triangle, H = (√3/2)·P in m. */
export function sharpHeight(pitch: number): number {
  return (Math.sqrt(3) / 2) * pitch;
}

/**
 * Basic pitch diameter in m: d − ¾H = d − 0.649519·P for a V thread, d − P/2 for the others.
 * @throws RangeError unless 0 < pitch < majorDiameter/2
 */
export function pitchDiameter(form: ThreadForm, size: ThreadSize): number {
  assertThreadSize(size);
  const depth = form === 'v60' ? 0.75 * sharpHeight(size.pitch) : size.pitch / 2;
  return size.majorDiameter - depth;
}

/** One inch in m, exact by definition. */
export const inch = 0.0254;

/**
 * Largest pitch diameter of a class 2G Acme screw, d − P/2 − 0.008·√d with all in inches, in m:
 * the loosest fit's allowance, which a real screw has and the basic profile has not.
 * Source: `thread-standards-inch`. @throws RangeError unless 0 < pitch < majorDiameter/2
 */
export function acmePitchDiameter2G(size: ThreadSize): number {
  return pitchDiameter('acme', size) - 0.008 * Math.sqrt(size.majorDiameter / inch) * inch;
}

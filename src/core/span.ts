/**
 * Two second opinions on the tension of a span: its note when plucked, and how far it yields when
 * pressed sideways at the middle.
 * Units: SI only (m, N, Pa, Hz, kg/m³, N·m²).
 * Source: see `pluck.ts`, `press.ts` and `beam-under-tension.ts`.
 */
import { assertAtLeast, assertPositive, refuse } from './assert.ts';
import { rootBetween } from './root.ts';
import { lateralStiffness, type SpanEnds } from './span/beam-under-tension.ts';
import {
  lowestPitch,
  pitchFromTension,
  type SoundingSpan,
  tensionFromPitch,
} from './span/pluck.ts';
import { type PressedSpan, pressForce, stretchStiffness } from './span/press.ts';

export { massPerLength, massRatio } from './span/band-mass.ts';
export { endLength, flatBendingStiffness } from './span/beam-under-tension.ts';
export { endsShare, pressShares } from './span/check-shares.ts';
export { effectiveLength } from './span/press.ts';
export { toothOffset, toothTipCompliance, torsionConstant } from './span/twist.ts';

/**
 * A plucked strip by its material; `massRatio` is m/(ρA), above 1: teeth weigh but carry nothing.
 */
export interface PluckedStrip {
  readonly span: number; // m
  readonly density: number; // kg/m³
  readonly thickness: number; // m
  readonly youngsModulus: number; // Pa
  readonly ends: SpanEnds;
  readonly massRatio?: number; // 1 unless given
  readonly harmonic?: number; // 1 unless given
}

/** The strip per square metre of section: its tension in N is then the stress in Pa. */
function perArea(strip: PluckedStrip): SoundingSpan {
  const { span, density, thickness, youngsModulus, ends, massRatio = 1, harmonic = 1 } = strip;
  assertPositive('density', density, 'kg/m³');
  assertPositive('thickness', thickness, 'm');
  assertPositive('youngsModulus', youngsModulus, 'Pa');
  assertPositive('massRatio', massRatio);
  const bendingStiffness = (youngsModulus * thickness ** 2) / 12;
  return { massPerLength: density * massRatio, bendingStiffness, span, ends, harmonic };
}

/**
 * Stress in Pa of the strip that sounds at `frequency`, near 4ρs²f²·m/(ρA) where it is thin.
 * @throws RangeError unless sizes are above 0, frequency 10 to 1000 Hz and above the slack strip's
 * note
 */
export function stressFromPitch({
  frequency,
  ...strip
}: PluckedStrip & { readonly frequency: number }): number {
  return tensionFromPitch(perArea(strip), frequency);
}

/**
 * Lowest note in Hz that tells a stress of the strip: under it stiffness weighs too much.
 * @throws RangeError unless sizes are above 0
 */
export function lowestNote(strip: PluckedStrip): number {
  return lowestPitch(perArea(strip));
}

/**
 * Note in Hz of the strip under `stress`, the inverse of `stressFromPitch`.
 * @throws RangeError unless stress > 0 Pa and the ends leave some of the span free to sound
 */
export function pitchFromStress({
  stress,
  ...strip
}: PluckedStrip & { readonly stress: number }): number {
  assertPositive('stress', stress, 'Pa');
  return pitchFromTension(perArea(strip), stress);
}

/**
 * Deflection d in m of the middle of the span under a side force: K(T)·d + 8EA·d³/(s²·L_eff) = F.
 * @throws RangeError unless force ≥ 0 N and tension > 0 N
 */
export function deflectionUnderPress({
  force,
  ...pressed
}: PressedSpan & { readonly force: number; readonly tension: number }): number {
  assertAtLeast('force', force, 0, 'N');
  const stiffness = lateralStiffness(pressed, pressed.ends);
  const cubic = stretchStiffness(pressed);
  if (cubic === 0) return force / stiffness;
  // The one real root of a rising cubic.
  const scale = Math.sqrt(stiffness / (3 * cubic));
  return 2 * scale * Math.sinh(Math.asinh((1.5 * force) / (stiffness * scale)) / 3);
}

/**
 * Tension in N that lets the span yield by `deflection` under `force`.
 * @throws RangeError unless force is more than bending and stretch alone would take
 */
export function tensionFromPress({
  force,
  deflection,
  ...pressed
}: PressedSpan & { readonly force: number; readonly deflection: number }): number {
  assertPositive('force', force, 'N');
  assertPositive('deflection', deflection, 'm');
  assertPositive('span', pressed.span, 'm');
  const forceAt = (tension: number) => pressForce({ ...pressed, tension }, deflection);
  const bareString = (force / deflection) * (pressed.span / 4);
  const slack = bareString * 1e-9;
  const least = forceAt(slack);
  if (force <= least) refuse('force', `above ${least}`, 'N', force);
  // A bare string is the upper bound itself: leave its rounding some room.
  return rootBetween((tension) => forceAt(tension) - force, slack, bareString * 1.001);
}

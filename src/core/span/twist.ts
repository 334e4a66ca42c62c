/**
 * The band twists too: a side force acts at the tooth line, off the middle of the body.
 * Units: SI only (N, Pa, m, N·m/rad, m/N, Hz).
 * Source: derived here; torsion of a thin rectangle 1/3·(1 − 0.63 t/w): Roark, from memory. Feed
 * force on the front edge, which lowers the stiffness, is left out.
 */
import { assertAtLeast, assertAtMost, assertPositive } from '../assert.ts';
import {
  edgewiseBendingStiffness,
  flatBendingStiffness,
  lateralStiffness,
  type SpanEnds,
} from './beam-under-tension.ts';

/** Body of the band as a thin rectangle. */
export interface Rectangle {
  readonly width: number; // m, the body, below the gullets
  readonly thickness: number; // m
}

/** A span that can be pushed and twisted at its middle. */
export interface TwistedSpan extends Rectangle {
  readonly tension: number; // N
  readonly youngsModulus: number; // Pa
  readonly shearModulus: number; // Pa
  readonly span: number; // m
  readonly toothOffset: number; // m, from the middle of the body to the tooth line
  readonly ends: SpanEnds;
}

/** Twisting constant J = w·t³/3·(1 − 0.63 t/w) in m⁴. @throws RangeError unless 0 < t ≤ w */
export function torsionConstant({ width, thickness }: Rectangle): number {
  assertPositive('thickness', thickness, 'm');
  assertPositive('width', width, 'm');
  assertAtMost('thickness', thickness, width, 'm');
  return ((width * thickness ** 3) / 3) * (1 - (0.63 * thickness) / width);
}

function squareOfGyration({ width, thickness }: Rectangle): number {
  return (width ** 2 + thickness ** 2) / 12;
}

/**
 * Twisting stiffness at mid-span k_t = 4(G·J + T·r²)/s in N·m/rad, r² = (w² + t²)/12: the pull
 * itself resists twist.
 * @throws RangeError unless all are above 0 and t ≤ w
 */
export function twistingStiffness(
  strip: Omit<TwistedSpan, 'youngsModulus' | 'toothOffset' | 'ends'>,
): number {
  assertPositive('tension', strip.tension, 'N');
  assertPositive('shearModulus', strip.shearModulus, 'Pa');
  assertPositive('span', strip.span, 'm');
  const steel = strip.shearModulus * torsionConstant(strip);
  return (4 * (steel + strip.tension * squareOfGyration(strip))) / strip.span;
}

/** Tooth line from the middle of the body, e = W − w/2 in m. @throws RangeError unless 0 < w ≤ W */
export function toothOffset(widthOverTeeth: number, bodyWidth: number): number {
  assertPositive('widthOverTeeth', widthOverTeeth, 'm');
  assertPositive('bodyWidth', bodyWidth, 'm');
  assertAtMost('bodyWidth', bodyWidth, widthOverTeeth, 'm');
  return widthOverTeeth - bodyWidth / 2;
}

/**
 * What a newton at the tooth tips moves them, m/N, by pushing the body aside and by twisting it.
 */
export interface ToothTipCompliance {
  readonly push: number; // m/N, 1/K
  readonly twist: number; // m/N, e²/k_t
  readonly total: number; // m/N
  readonly twistShare: number; // twist/total, 0 to 1
}

/**
 * Compliance 1/K + e²/k_t in m/N of the tooth tips at mid-span, with its two parts.
 * @throws RangeError unless tension and sizes are above 0, toothOffset ≥ 0
 */
export function toothTipCompliance(strip: TwistedSpan): ToothTipCompliance {
  assertAtLeast('toothOffset', strip.toothOffset, 0, 'm');
  const bendingStiffness = flatBendingStiffness(strip);
  const push = 1 / lateralStiffness({ ...strip, bendingStiffness }, strip.ends);
  const twist = strip.toothOffset ** 2 / twistingStiffness(strip);
  return { push, twist, total: push + twist, twistShare: twist / (push + twist) };
}

/**
 * Side stiffness in N/m of a span pushed edgewise, against the feed; far above the flat way.
 * @throws RangeError unless tension and sizes are above 0
 */
export function edgewiseStiffness(
  strip: Omit<TwistedSpan, 'shearModulus' | 'toothOffset'>,
): number {
  const bendingStiffness = edgewiseBendingStiffness(strip);
  return lateralStiffness({ ...strip, bendingStiffness }, strip.ends);
}

/**
 * Twisting note f = n/(2s)·√((GJ/I_p + σ)/ρ) in Hz, I_p = w·t·(w² + t²)/12; it sounds beside the
 * plain note, 1.25 to 2.9 times higher, and wins where the edge is plucked.
 * @throws RangeError unless all are above 0, t ≤ w, harmonic ≥ 1
 */
export function torsionFrequency({
  stress,
  density,
  shearModulus,
  span,
  harmonic = 1,
  ...strip
}: Rectangle & {
  readonly stress: number; // Pa
  readonly density: number; // kg/m³
  readonly shearModulus: number; // Pa
  readonly span: number; // m
  readonly harmonic?: number;
}): number {
  assertPositive('stress', stress, 'Pa');
  assertPositive('density', density, 'kg/m³');
  assertPositive('shearModulus', shearModulus, 'Pa');
  assertPositive('span', span, 'm');
  assertAtLeast('harmonic', harmonic, 1);
  const polar = strip.width * strip.thickness * squareOfGyration(strip);
  const steel = (shearModulus * torsionConstant(strip)) / polar;
  return (harmonic / (2 * span)) * Math.sqrt((steel + stress) / density);
}

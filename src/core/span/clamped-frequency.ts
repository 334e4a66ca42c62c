/**
 * Notes of a stiff string with ideal ends, exact and by series: what the plainer forms of
 * `pluck.ts` are checked against, and what a span in a vise does.
 * Units: SI only (N, kg/m, N·m², m, Hz).
 * Source: beam equation, Rao, Mechanical Vibrations, 8.5, from memory; series: H. Fletcher, J.
 * Acoust. Soc. Am. 36 (1964) 203, from memory.
 */
import { assertPositive, assertWhole } from '../assert.ts';
import { rootBetween } from '../root.ts';
import type { TensionedSpan } from './beam-under-tension.ts';

/** A stiff string; `bendingStiffness` is above 0 here. */
export interface StiffString extends TensionedSpan {
  readonly massPerLength: number; // kg/m
  readonly harmonic?: number; // whole, 1 unless given
}

/** The checked string as the formulas take it: its number, its plain note, ε = EI/(T·s²). */
function reduced(string: StiffString): { harmonic: number; note: number; epsilon: number } {
  const { tension, massPerLength, bendingStiffness, span, harmonic = 1 } = string;
  assertPositive('tension', tension, 'N');
  assertPositive('massPerLength', massPerLength, 'kg/m');
  assertPositive('bendingStiffness', bendingStiffness, 'N·m²');
  assertPositive('span', span, 'm');
  assertWhole('harmonic', harmonic, 1, 100);
  const note = (harmonic / (2 * span)) * Math.sqrt(tension / massPerLength);
  return { harmonic, note, epsilon: bendingStiffness / (tension * span ** 2) };
}

/**
 * Note between pinned ends, f = n/(2s)·√(T/m)·√(1 + n²π²ε) in Hz, exact.
 * @throws RangeError unless all are above 0 and harmonic is a whole number
 */
export function pinnedFrequency(string: StiffString): number {
  const { harmonic, note, epsilon } = reduced(string);
  return note * Math.sqrt(1 + (harmonic * Math.PI) ** 2 * epsilon);
}

/**
 * Note between clamped ends in Hz, exact: the n-th root of
 * 2ab(1/cosh a − cos b) + (a² − b²)·sin b·tanh a = 0 with a² − b² = 1/ε and ω = (ab/s²)·√(EI/m).
 * @throws RangeError unless all are above 0 and harmonic is a whole number
 */
export function clampedFrequency(string: StiffString): number {
  const { harmonic, epsilon } = reduced(string);
  const endCondition = (b: number) => {
    const a = Math.sqrt(b ** 2 + 1 / epsilon);
    const bend = 2 * a * b * (1 / Math.cosh(a) - Math.cos(b));
    return bend + (Math.sin(b) * Math.tanh(a)) / epsilon;
  };
  // The string's root is nπ, the beam's about (n + ½)π (at most 1.506π); all others lie between.
  const b = rootBetween(endCondition, harmonic * Math.PI, (harmonic + 0.6) * Math.PI);
  const a = Math.sqrt(b ** 2 + 1 / epsilon);
  const { bendingStiffness, massPerLength, span } = string;
  return ((a * b) / (2 * Math.PI * span ** 2)) * Math.sqrt(bendingStiffness / massPerLength);
}

/**
 * Note between clamped ends as Fletcher printed it, n·f₀·√(1 + Bn²)·(1 + (2/π)√B + (4/π²)B) in Hz
 * with B = π²ε; third order in √ε from the exact one.
 * @throws RangeError unless all are above 0 and harmonic is a whole number
 */
export function clampedFrequencyFletcher(string: StiffString): number {
  const { epsilon } = reduced(string);
  return pinnedFrequency(string) * (1 + 2 * Math.sqrt(epsilon) + 4 * epsilon);
}

/**
 * The same multiplied out and cut after the first power of ε, n·f₀·(1 + 2√ε + (4 + n²π²/2)ε) in Hz.
 * @throws RangeError unless all are above 0 and harmonic is a whole number
 */
export function clampedFrequencySeries(string: StiffString): number {
  const { harmonic, note, epsilon } = reduced(string);
  const second = 4 + (harmonic * Math.PI) ** 2 / 2;
  return note * (1 + 2 * Math.sqrt(epsilon) + second * epsilon);
}

/**
 * The note of a plucked span and the tension that it tells, as forces: the thickness of the band is
 * needed only for its small stiffness, so weigh the band.
 * Units: SI only (N, kg/m, N·m², m, Hz).
 * Source: the string: OpenStax, University Physics 1, 16.3; stiffness and ends derived here, to
 * first order the same as H. Fletcher, J. Acoust. Soc. Am. 36 (1964) 203, from memory.
 */
import { assertAtLeast, assertBelow, assertBetween, assertPositive, refuse } from '../assert.ts';
import { rootBetween } from '../root.ts';
import { endLength, type SpanEnds } from './beam-under-tension.ts';

/** A span that sounds; `harmonic` 1 is the lowest note. */
export interface SoundingSpan {
  readonly massPerLength: number; // kg/m, > 0
  readonly bendingStiffness: number; // N·m², ≥ 0
  readonly span: number; // m, > 0, measured as the kind of end asks
  readonly ends: SpanEnds;
  readonly harmonic?: number; // 1, 2, 3 …
}

/** Both ends together shorten the sounding span by this many end lengths. */
const shortening: Readonly<Record<SpanEnds, number>> = {
  wheels: 0,
  guides: 1,
  pinned: 0,
  clamped: 2,
};

/** The formula is a first step from the string: it needs this many times π²n²EI/s² of tension. */
const leastPull = 5;

/** A strip with no stiffness is the upper bound itself: its rounding must not fall outside. */
const roomForRounding = 1.001;

function assertSounding({ massPerLength, span, harmonic = 1 }: Omit<SoundingSpan, 'ends'>): void {
  assertPositive('massPerLength', massPerLength, 'kg/m');
  assertPositive('span', span, 'm');
  assertAtLeast('harmonic', harmonic, 1);
}

/**
 * Note f = n/(2s′)·√(T/m)·(1 + n²π²EI/(2Ts²)) in Hz, s′ = s − (0, 1 or 2)·√(EI/T).
 * @throws RangeError unless tension > 0 and the ends leave some of the span free to sound
 */
export function pitchFromTension(sounding: SoundingSpan, tension: number): number {
  const { massPerLength, bendingStiffness, span, ends, harmonic = 1 } = sounding;
  assertSounding(sounding);
  const lost = shortening[ends] * endLength({ tension, bendingStiffness });
  assertBelow('length held by the ends', lost, span, 'm');
  const stiffer = (harmonic * Math.PI) ** 2 * (bendingStiffness / (2 * tension * span ** 2));
  const string = (harmonic / (2 * (span - lost))) * Math.sqrt(tension / massPerLength);
  return string * (1 + stiffer);
}

/**
 * Tension T = 4m(s·f/n)² in N of a string without stiffness that sounds at `frequency`.
 * @throws RangeError unless 10 Hz ≤ frequency ≤ 1000 Hz and the sizes are above 0
 */
export function stringTension(
  sounding: Pick<SoundingSpan, 'massPerLength' | 'span' | 'harmonic'>,
  frequency: number,
): number {
  assertSounding({ ...sounding, bendingStiffness: 0 });
  assertBetween('frequency', frequency, 10, 1000, 'Hz');
  const { massPerLength, span, harmonic = 1 } = sounding;
  return 4 * massPerLength * ((span * frequency) / harmonic) ** 2;
}

/** Tension in N from which on the formula holds: five times what bending alone resists with; 0 for a string. */
function leastTension({ bendingStiffness, span, harmonic = 1 }: SoundingSpan): number {
  return leastPull * bendingStiffness * ((harmonic * Math.PI) / span) ** 2;
}

/**
 * Lowest note in Hz from which a tension can be told: under it stiffness weighs too much.
 * @throws RangeError unless sizes and bendingStiffness are above 0
 */
export function lowestPitch(sounding: SoundingSpan): number {
  assertSounding(sounding);
  assertPositive('bendingStiffness', sounding.bendingStiffness, 'N·m²');
  return pitchFromTension(sounding, leastTension(sounding));
}

/**
 * Tension in N whose note is `frequency`: the inverse of `pitchFromTension` where tension outweighs
 * stiffness five times or more.
 * @throws RangeError unless 10 Hz ≤ frequency ≤ 1000 Hz, and above the note of a nearly slack strip
 */
export function tensionFromPitch(sounding: SoundingSpan, frequency: number): number {
  const highest = stringTension(sounding, frequency);
  const lowest = Math.max(leastTension(sounding), highest * Number.EPSILON);
  const lowestNote = pitchFromTension(sounding, lowest);
  if (frequency < lowestNote) refuse('frequency', `at least ${lowestNote}`, 'Hz', frequency);
  const surplus = (tension: number) => pitchFromTension(sounding, tension) - frequency;
  return rootBetween(surplus, lowest, highest * roomForRounding);
}

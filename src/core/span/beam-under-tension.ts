/**
 * How stiffly a pulled strip resists a side force at mid-span: string and beam together.
 * Units: SI only (N, N·m², m, N/m).
 * Source: Timoshenko, Strength of Materials II, ch. II (tie rods), from memory, for pinned and
 * clamped ends; the end on guides derived here. Feed force and the motion of the band are left out.
 */
import { assertAtLeast, assertPositive } from '../assert.ts';

/**
 * What holds a span. Wheels act as pinned at the tangent points: the stiff band leaves the wheel an
 * end length early, which cancels its clamping (derived here). Guides are rollers with the band
 * going on beyond them.
 */
export type SpanEnds = 'wheels' | 'guides' | 'pinned' | 'clamped';

/** A span of band under tension; `bendingStiffness` is E·I, 0 for a bare string. */
export interface TensionedSpan {
  readonly tension: number; // N, > 0
  readonly bendingStiffness: number; // N·m², ≥ 0
  readonly span: number; // m, > 0
}

/** Size and stiffness of a strip. */
export interface StripSection {
  readonly youngsModulus: number; // Pa
  readonly width: number; // m
  readonly thickness: number; // m
}

/**
 * Stiffness E·I = E·w·t³/12 in N·m² against bending the flat way.
 * @throws RangeError unless all above 0
 */
export function flatBendingStiffness(strip: StripSection): number {
  assertStrip(strip);
  return (strip.youngsModulus * strip.width * strip.thickness ** 3) / 12;
}

/**
 * Stiffness E·I = E·t·w³/12 in N·m² against bending edgewise.
 * @throws RangeError unless all above 0
 */
export function edgewiseBendingStiffness(strip: StripSection): number {
  assertStrip(strip);
  return (strip.youngsModulus * strip.thickness * strip.width ** 3) / 12;
}

function assertStrip({ youngsModulus, width, thickness }: StripSection): void {
  assertPositive('youngsModulus', youngsModulus, 'Pa');
  assertPositive('width', width, 'm');
  assertPositive('thickness', thickness, 'm');
}

/**
 * End length 1/κ = √(EI/T) in m, over which bending fades out.
 * @throws RangeError unless T > 0, EI ≥ 0
 */
export function endLength({
  tension,
  bendingStiffness,
}: Pick<TensionedSpan, 'tension' | 'bendingStiffness'>): number {
  assertPositive('tension', tension, 'N');
  assertAtLeast('bendingStiffness', bendingStiffness, 0, 'N·m²');
  return Math.sqrt(bendingStiffness / tension);
}

/** 4T/(s·(1 − saving)), where the saving is what bending takes off the string's sag. */
function stiffness(beam: TensionedSpan, saving: (halfSpan: number) => number): number {
  assertPositive('span', beam.span, 'm');
  const halfSpan = beam.span / (2 * endLength(beam));
  return (4 * beam.tension) / (beam.span * (1 - saving(halfSpan)));
}

/**
 * Side stiffness with pinned ends, 4T/(s(1 − tanh u/u)) in N/m with u = (s/2)√(T/EI).
 * @throws RangeError unless tension > 0, bendingStiffness ≥ 0, span > 0
 */
export function lateralStiffnessPinned(beam: TensionedSpan): number {
  return stiffness(beam, (u) => Math.tanh(u) / u);
}

/**
 * Side stiffness with clamped ends, 4T/(s(1 − tanh(u/2)/(u/2))) in N/m.
 * @throws RangeError unless tension > 0, bendingStiffness ≥ 0, span > 0
 */
export function lateralStiffnessClamped(beam: TensionedSpan): number {
  return stiffness(beam, (u) => Math.tanh(u / 2) / (u / 2));
}

/**
 * Side stiffness between roller guides in N/m: the long strip beyond turns the end back with
 * √(T·EI) per radian, so 1 − [tanh u + (1 − 1/cosh u)²/(1 + tanh u)]/u stands in the bracket,
 * half-way between pinned and clamped for a long span.
 * @throws RangeError unless tension > 0, bendingStiffness ≥ 0, span > 0
 */
export function lateralStiffnessGuided(beam: TensionedSpan): number {
  return stiffness(
    beam,
    (u) => (Math.tanh(u) + (1 - 1 / Math.cosh(u)) ** 2 / (1 + Math.tanh(u))) / u,
  );
}

/** Side stiffness in N/m for any of the four kinds of end. @throws RangeError as above */
export function lateralStiffness(beam: TensionedSpan, ends: SpanEnds): number {
  if (ends === 'clamped') return lateralStiffnessClamped(beam);
  if (ends === 'guides') return lateralStiffnessGuided(beam);
  return lateralStiffnessPinned(beam);
}

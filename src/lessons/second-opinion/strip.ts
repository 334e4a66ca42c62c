/**
 * The two bands of the lesson between their guides, and what their stiffness does to the tones.
 * Units: SI.
 * Source: core/span; the bands are those of the invented mills at Ottersleigh and Yarrock. A toothed zone is taken as half
 * full of steel (core/span/band-mass).
 */
import { sectionArea } from '../../core/section.ts';
import { massPerLength, massRatio, type PluckedStrip } from '../../core/span.ts';
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';

/** A band by its sizes. */
interface Band {
  readonly widthOverTeeth: number; // m
  readonly bodyWidth: number; // m
  readonly thickness: number; // m
}

/** The bands to choose from. */
export const BANDS = {
  narrow: OTTERSLEIGH,
  wide: { widthOverTeeth: 0.102, bodyWidth: 0.092, thickness: 0.00125 }, // at Yarrock
} as const satisfies Readonly<Record<string, Band>>;

/** The name of one of the bands. */
export type BandName = keyof typeof BANDS;

const { density, youngsModulus } = OTTERSLEIGH;

/** A band's section in m², and its mass over that of the section. */
export function bodyOf(name: BandName) {
  const { bodyWidth: width, thickness } = BANDS[name];
  const area = sectionArea({ width, thickness });
  const mass = massPerLength({ density, ...BANDS[name] });
  return { area, massRatio: massRatio(mass, density, area) };
}

/** A band between two guides that are so far apart, centre to centre. */
export function stripOf(name: BandName, span: number): PluckedStrip {
  const { thickness } = BANDS[name];
  const { massRatio } = bodyOf(name);
  return { span, density, thickness, youngsModulus, massRatio, ends: 'guides' };
}

/** How much stiffness raises the tones of a strip, f = n·F·(1 + n²·sharpening/F²), in Hz². */
export function sharpeningOf({
  span,
  density,
  thickness,
  youngsModulus,
  massRatio = 1,
}: PluckedStrip): number {
  return ((Math.PI * thickness) ** 2 * youngsModulus) / (96 * density * massRatio * span ** 4);
}

/**
 * The stress that a note tells, and how well: the note's own interval, the span by ruler, what holds its ends (between
 * freely turning and clamped), and the weight of the teeth.
 * Units: SI.
 * Source: core/span; half-widths: core/assumptions; root sum of squares: `gum`, from memory.
 */
import { checkHalfWidths, coverage } from '../../core/assumptions.ts';
import { endsShare, lowestNote, stressFromPitch } from '../../core/span.ts';
import { BANDS, type BandName, stripOf } from './strip.ts';

/** A note that was found on a span, with its 95 % half-width. */
export interface FoundNote {
  readonly note: number; // Hz
  readonly noteWidth: number; // Hz
  readonly span: number; // m
  readonly band: BandName;
}

/** Standard uncertainty of what may lie anywhere within a half-width. */
export const uniform = (halfWidth: number) => halfWidth / Math.sqrt(3);

/** Standard uncertainties as shares of the stress, by where they come from. */
export function sharesOf(found: FoundNote, stress: number) {
  const strip = stripOf(found.band, found.span);
  const { widthOverTeeth, bodyWidth } = BANDS[found.band];
  const teeth = widthOverTeeth - bodyWidth;
  return {
    note: (2 * found.noteWidth) / coverage.factor / found.note,
    span: uniform((2 * checkHalfWidths.span) / found.span),
    ends: uniform(endsShare({ ...strip, stress })),
    teeth: uniform((checkHalfWidths.toothFill * teeth) / (bodyWidth + teeth / 2)),
  };
}

/** The stress with its expanded uncertainty, Pa; a note too low for the span is taken for the lowest. */
export function stressFromNote(found: FoundNote) {
  const strip = stripOf(found.band, found.span);
  const lowest = lowestNote(strip);
  const stress = stressFromPitch({ ...strip, frequency: Math.max(found.note, lowest) });
  const expanded = coverage.factor * stress * Math.hypot(...Object.values(sharesOf(found, stress)));
  return { stress, expanded, lowest };
}

/** The same note as a string's without stiffness between points, Pa: 4ρ·(m/ρA)·s²·f². */
export function stringStress({ note, span, band }: Omit<FoundNote, 'noteWidth'>): number {
  const { density, massRatio = 1 } = stripOf(band, span);
  return 4 * density * massRatio * (span * note) ** 2;
}

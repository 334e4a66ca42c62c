/**
 * How far a second opinion may be off, as half-widths in shares of the stress: one rule for every page that gives one.
 * Units: SI only (m, Pa); shares have none.
 * Source: relative half-widths of a product, to first order; the readings' own, assumptions.ts; what holds the ends, derived here.
 */
import { checkHalfWidths, sectionHalfWidths } from '../assumptions.ts';
import { endLength } from './beam-under-tension.ts';

/** A plucked span of a band under a stress. */
export interface PluckedSpan {
  readonly span: number; // m
  readonly thickness: number; // m
  readonly youngsModulus: number; // Pa
  readonly stress: number; // Pa
}

/**
 * What the ends leave open: they are held somewhere between freely turning and clamped, an end length √(EI/T) each way.
 * @throws RangeError unless the stress is above 0
 */
export function endsShare({ span, thickness, youngsModulus, stress }: PluckedSpan): number {
  const bendingStiffness = (youngsModulus * thickness ** 2) / 12; // for each square meter
  const end = endLength({ tension: stress, bendingStiffness });
  return (2 * end) / (span - end);
}

/** A push at the middle of a span. */
export interface PushedSpan {
  readonly span: number; // m
  readonly deflection: number; // m
  readonly bodyWidth: number; // m
  readonly thickness: number; // m
}

/** What scale, rulers and the section leave open of a press; the stress goes as each of them or as one over it. */
export const pressShares = ({ span, deflection, bodyWidth, thickness }: PushedSpan) => ({
  weight: checkHalfWidths.weight,
  deflection: checkHalfWidths.deflection / deflection,
  span: checkHalfWidths.span / span,
  bodyWidth: sectionHalfWidths.bodyWidth / bodyWidth,
  thickness: sectionHalfWidths.thickness / thickness,
});

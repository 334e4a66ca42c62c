/**
 * The cutting span at Ottersleigh, standing still, pushed sideways at its teeth in the middle between the guides: how far
 * the body bows, how far the twist carries the teeth beyond that.
 * Units: SI.
 * Source: core/span; the push is one of our choice (assumptions: windowWishes).
 */
import { bandSteel, windowWishes } from '../../../core/assumptions.ts';
import { toothOffset, toothTipCompliance, torsionConstant } from '../../../core/span.ts';
import { bandArea, OTTERSLEIGH } from '../../../models/mills/ottersleigh.ts';

const { widthOverTeeth, bodyWidth, thickness, youngsModulus } = OTTERSLEIGH;

/** The push of the knot, N. */
export const PUSH = windowWishes.push;

/** The band as a strip between roller guides, all but its span and its tension. */
export const STRIP = {
  youngsModulus,
  shearModulus: bandSteel.shearModulus,
  width: bodyWidth,
  thickness,
  toothOffset: toothOffset(widthOverTeeth, bodyWidth),
  ends: 'guides',
} as const;

/** Where the push moves the band. */
export interface Pushed {
  readonly bow: number; // m, the middle of the body
  readonly twist: number; // m, what the teeth go beyond that
  readonly teeth: number; // m, both together
  readonly twistShare: number; // of the teeth's movement
  readonly tilt: number; // rad
}

/** The push on a span under a stress. */
export function pushedSpan(stress: number, span: number): Pushed {
  const { push, twist, total, twistShare } = toothTipCompliance({
    ...STRIP,
    span,
    tension: stress * bandArea,
  });
  return {
    bow: PUSH * push,
    twist: PUSH * twist,
    teeth: PUSH * total,
    twistShare,
    tilt: (PUSH * twist) / STRIP.toothOffset,
  };
}

/** How much of the resistance to twist is the steel's own, the rest being the pull's: a share. */
export function steelShare(stress: number): number {
  const own = STRIP.shearModulus * torsionConstant(STRIP);
  const both = (PUSH * STRIP.toothOffset ** 2) / (4 * pushedSpan(stress, 1).twist);
  return own / both;
}

/** The tensions that the lesson sets side by side, as parts of the reader's own. */
export const PARTS = [1, 1 / 2, 1 / 4] as const;

/** The second guide spacing, as a part of the reader's own. */
export const CLOSER = 1 / 2;

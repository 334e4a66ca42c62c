/**
 * A weight hung from the middle of the free strand at Ottersleigh, wheel to wheel, and the stress that it tells.
 * Units: SI.
 * Source: core/span; standard gravity: definition. The wheels are taken to let the band roll.
 */
import { coverage } from '../../../core/assumptions.ts';
import { loopLengthEqual } from '../../../core/loop.ts';
import {
  deflectionUnderPress,
  effectiveLength,
  flatBendingStiffness,
  pressShares,
  tensionFromPress,
} from '../../../core/span.ts';
import { bandArea, OTTERSLEIGH } from '../../../models/mills/ottersleigh.ts';
import { uniform } from '../stress-from-note.ts';

/** By definition, m/s². */
export const STANDARD_GRAVITY = 9.80665;

const { centreDistance, bodyWidth: width, thickness, youngsModulus } = OTTERSLEIGH;
const axialStiffness = youngsModulus * bandArea;

/** The strand between the points where it leaves the wheels. */
export const STRAND = {
  span: centreDistance, // its wheels are alike
  bendingStiffness: flatBendingStiffness({ youngsModulus, width, thickness }),
  ends: 'wheels',
  axialStiffness,
  effectiveLength: effectiveLength({
    loopLength: loopLengthEqual(OTTERSLEIGH),
    axialStiffness,
    frameStiffness: OTTERSLEIGH.frameStiffness,
  }),
} as const;

/** Strand force in N by a weight (as a mass) and how far it moves the middle, as a bare string and in full. */
export function forcesOf(weight: number, deflection: number) {
  const force = weight * STANDARD_GRAVITY;
  return {
    force,
    string: (force * STRAND.span) / (4 * deflection),
    full: tensionFromPress({ ...STRAND, force, deflection }),
  };
}

/** How far a weight moves the middle of the strand under a stress, m. */
export const deflectionOf = (weight: number, stress: number): number =>
  deflectionUnderPress({ ...STRAND, force: weight * STANDARD_GRAVITY, tension: stress * bandArea });

/** Expanded uncertainty of the stress from a press, as a share of it: scale, rulers, width, thickness. */
export function pressShare(deflection: number): number {
  const shares = pressShares({ span: STRAND.span, deflection, bodyWidth: width, thickness });
  return coverage.factor * Math.hypot(...Object.values(shares).map(uniform));
}

/**
 * The window of tension at Ottersleigh: what straightness and grip ask for, what steel, life and the mill's maker allow.
 * Units: SI.
 * Source: core/tightness; wishes and least margins: assumptions. Life is a ratio to that of the tension set today.
 */
import {
  bandSteel,
  edgeFactor,
  leastMargins,
  windowWishes,
  yieldShares,
} from '../../../core/assumptions.ts';
import {
  stressAtWheelLimit,
  stressToGrip,
  stressToKeepLife,
  stressToKeepStraight,
  stressToPeak,
  type TensionWindow,
  tensionWindow,
} from '../../../core/tightness.ts';
import { bendingStress } from '../../../core/wheel.ts';
import { bandArea, OTTERSLEIGH } from '../../../models/mills/ottersleigh.ts';
import { BAND, runningRise, SHARE, WRAP } from '../grip/drive-wheel.ts';
import { PUSH, STRIP } from '../push/pushed-span.ts';

/** What the reader asks of the band and lays on it. */
export interface Wishes {
  readonly span: number; // m, from guide to guide
  readonly movement: number; // m that the push may move the teeth
  readonly power: number; // W
  readonly friction: number; // of the rim
  readonly exponent: number; // of life
  readonly millLimit: number; // N on the wheel
}

/** The tension set today, whose life is the measure. */
export const TODAY = OTTERSLEIGH.targetStress;

/** Least slip margin, the part of the yield strength that the bent band may reach, the part of life to be kept. */
export const KEPT = {
  margin: leastMargins.slip,
  yieldShare: yieldShares.shortLife,
  life: windowWishes.lifeKept,
} as const;

/** Stress in Pa that the bend over a wheel adds at the gullets. */
export const BENDING = edgeFactor * bendingStress(OTTERSLEIGH);

/** The highest peak in Pa that is asked of the steel, tension and bend together. */
export const MOST_PEAK = KEPT.yieldShare * bandSteel.yieldStrength;

/** Where every cause puts its edge, Pa. */
export function edgesOf({ span, movement, power, friction, exponent, millLimit }: Wishes) {
  const bent = {
    bendingStress: bendingStress(OTTERSLEIGH),
    edgeFactor,
    runningRise: runningRise(power),
  };
  const grip = { friction, wrap: WRAP };
  return {
    straightness: stressToKeepStraight({ ...STRIP, span, push: PUSH, movement }),
    grip: stressToGrip({
      band: BAND,
      power,
      grip,
      share: SHARE,
      area: bandArea,
      margin: KEPT.margin,
    }),
    life: stressToKeepLife(bent, { today: TODAY, kept: KEPT.life, exponent }),
    millMaker: stressAtWheelLimit(millLimit, bandArea),
    yield: stressToPeak(bent, MOST_PEAK),
  };
}

/** The edges by their causes. */
export type Edges = ReturnType<typeof edgesOf>;

/** Which of them bind. */
export function windowOf(edges: Edges): TensionWindow {
  return tensionWindow(
    (['straightness', 'grip'] as const).map((cause) => ({ cause, stress: edges[cause] })),
    (['millMaker', 'life', 'yield'] as const).map((cause) => ({ cause, stress: edges[cause] })),
  );
}

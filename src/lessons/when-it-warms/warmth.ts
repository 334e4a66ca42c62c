/**
 * How much warmer the three parts of the mill at Ottersleigh are than at its setting, and what that does to its tension.
 * Units: SI.
 * Source: core/drift.
 */
import {
  type SettingChecks,
  settingChecks,
  stressDrift,
  thermalSlack,
  type WarmedMill,
} from '../../core/drift.ts';
import { mill, support } from './mill.worked.ts';

/** What holds the movable wheel. */
export type Tensioner = 'rigid' | keyof typeof support;

/** How much warmer each part is than when the tension was set, K. */
export interface Warmth {
  readonly band: number;
  readonly frame: number;
  readonly wheels: number;
}

const SUPPORT: Readonly<Record<Tensioner, number>> = {
  ...support,
  rigid: Number.POSITIVE_INFINITY,
};

/** Share of what a rigid mill would lose, k/(k_b + k): 1 if nothing gives, 0 under constant pressure. */
export const supportShare = (tensioner: Tensioner): number =>
  1 / (1 + mill.bandStiffness / SUPPORT[tensioner]);

function warmed({ band, frame, wheels }: Warmth, tensioner: Tensioner): WarmedMill {
  const { expansion, bandStiffness, loopLength, centreDistance, wheelDiameter } = mill;
  return {
    bandStiffness,
    supportStiffness: SUPPORT[tensioner],
    band: { expansion, temperatureChange: band, loopLength },
    frame: { expansion, temperatureChange: frame, centreDistance },
    wheels: { expansion, temperatureChange: wheels, diameter: wheelDiameter },
  };
}

/** Change of the stress, below 0 where tension is lost. */
export const drift = (warmth: Warmth, tensioner: Tensioner): number =>
  stressDrift(warmed(warmth, tensioner), mill.area);

/** What the setting shows cold, warm, and cold again after it was tightened warm. */
export const checks = (warmth: Warmth, tensioner: Tensioner): SettingChecks =>
  settingChecks(mill.setting, warmed(warmth, tensioner), mill.area);

const NONE: Warmth = { band: 0, frame: 0, wheels: 0 };
const slack = (warmth: Warmth): number => thermalSlack(warmed(warmth, 'rigid'));

/** Growth at the movable wheel: what the band gains, what frame and wheels take up of it, what is left. */
export function growths(warmth: Warmth) {
  return {
    bandGain: slack({ ...NONE, band: warmth.band }),
    frameTakes: 0 - slack({ ...NONE, frame: warmth.frame }),
    wheelsTake: 0 - slack({ ...NONE, wheels: warmth.wheels }),
    slackNow: slack(warmth),
  };
}

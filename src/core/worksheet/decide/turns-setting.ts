/**
 * A setting as turns of the screw: counted from a torque to be marked on the straight part, never from slack.
 * Units: SI only (N·m; turns have no unit).
 * Source: springs in series, derived in turns.ts; JCGM 100:2008 (GUM) 5.1.6, from memory.
 */
import { coverage } from '../../assumptions.ts';
import { strandForce } from '../../section.ts';
import { turnsForForce } from '../../turns.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import { markedShare, turnsHalfWidth } from '../own-assumptions.ts';
import { pullOf } from '../predict/pull.ts';
import type { SectionResult } from '../predict/section.ts';
import { areaDoubt } from '../predict/section.ts';
import type { SettingReach } from './setting-reach.ts';
import type { TurnsResult } from './turns.ts';

/** From a marked torque so many turns on. */
export interface TurnsSetting {
  readonly markedTorque: number; // N·m
  readonly turns: number;
  readonly expandedUncertainty: number; // turns
}

/** What the turns of a setting hang on. */
export type TurnsNeeds = {
  readonly setting: Outcome<
    SettingReach & { readonly torque: number; readonly operands: { readonly dragTorque: number } }
  >;
  readonly turns: Outcome<TurnsResult>;
  readonly measured: Outcome<MeasuredResult>;
  readonly own: Outcome<SectionResult>; // of the band that was measured
  readonly other: Outcome<SectionResult>; // of the band to be set: the same, or another
};

/** The give of everything with another band, m/N: less the measured band's, and with the other's. */
function giveWith({ totalStiffness, bandStiffness }: TurnsResult, areaRatio: number): number {
  return 1 / totalStiffness + (1 / areaRatio - 1) / bandStiffness;
}

/**
 * Turns from the torque that gives half of the stress, or from where the readings run straight if that is higher;
 * waits for readings where they are not straight below the target, or have fewer turns than the band needs.
 */
export function turnsSetting(needs: TurnsNeeds): Outcome<TurnsSetting> {
  return whenReady(needs, ({ setting, turns: shown, measured, own, other }) => {
    const { torque, stress } = setting;
    const { dragTorque } = setting.operands;
    const { lead, advantage, straightStress } = shown.operands;
    const share = Math.max(markedShare, straightStress / stress);
    const give = giveWith(shown, other.area / own.area);
    if (share >= 1 || give <= 0) return { ready: false, waitsFor: ['readings'] };
    const force = strandForce(stress * (1 - share), other.area);
    const turns = turnsForForce({
      lead,
      advantage,
      wheelForce: pullOf(force, shown.operands),
      stiffness: 1 / give,
    });
    const relative = Math.hypot(
      measured.standardUncertainty / measured.stress,
      (Math.SQRT2 * turnsHalfWidth) / (Math.sqrt(3) * shown.operands.turns),
      ...(other.area === own.area ? [] : [areaDoubt(own.operands), areaDoubt(other.operands)]),
    );
    return ready({
      markedTorque: dragTorque + share * (torque - dragTorque),
      turns,
      expandedUncertainty: coverage.factor * relative * turns,
    });
  });
}

/**
 * The torque for the worksheet's target stress by the reader's own readings, and what the dial
 * should then show.
 * Units: SI only (N·m, Pa, m).
 * Source: proportion above the drag torque, derived in same-band.ts.
 */
import { elongation } from '../../elasticity.ts';
import { settingForStress } from '../../wheel/same-band.ts';
import { relativeDoubt } from '../doubt.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import { type SettingReach, settingReach } from './setting-reach.ts';

/** A stress that is wanted, Pa. */
export interface TargetStress {
  readonly stress: number;
}

/** What the dial should show for the target stress. */
export interface ExpectedStretchResult {
  readonly stretch: number; // m from zero
  readonly operands: {
    readonly stress: number; // Pa
    readonly gaugeLength: number; // m
    readonly youngsModulus: number; // Pa
  };
}

/** The torque by the reader's own readings; section, modulus and efficiency cancel. */
export interface SettingResult extends SettingReach {
  readonly torque: number; // N·m
  readonly beyondReadings: boolean; // above the top torque of the series
  readonly operands: {
    readonly dragTorque: number; // N·m
    readonly topTorque: number; // N·m
    readonly targetStress: number; // Pa
    readonly topStress: number; // Pa
  };
}

/** The target stress. */
export const knownTarget = ({ target }: Worksheet): Outcome<TargetStress> =>
  knownInputs({ stress: ['target.stress', target.stress] });

/** Dial stretch σ*·L₀/E for a target stress, whichever band it is for. */
export function worksheetExpectedStretch(
  { band, rig }: Worksheet,
  target: Outcome<TargetStress>,
): Outcome<ExpectedStretchResult> {
  const known = knownInputs({
    gaugeLength: ['rig.gaugeLength', rig.gaugeLength],
    youngsModulus: ['band.youngsModulus', band.youngsModulus],
  });
  return whenReady({ target, known }, (all) => {
    const operands = { ...all.target, ...all.known };
    return ready({ stretch: elongation(operands), operands });
  });
}

/** Torque M* = M_d + (M_top − M_d)·σ* / σ_top. */
export function worksheetSetting(
  targetOutcome: Outcome<TargetStress>,
  measuredOutcome: Outcome<MeasuredResult>,
): Outcome<SettingResult> {
  const needs = { measured: measuredOutcome, target: targetOutcome };
  return whenReady(needs, ({ measured, target: { stress } }) => {
    const { dragTorque, topTorque, stress: topStress } = measured;
    const known = { dragLoad: dragTorque, topLoad: topTorque, topStress };
    const torque = settingForStress(known, stress);
    const uncertainty = stress * relativeDoubt(measured, torque);
    return ready({
      torque,
      ...settingReach({ torque, dragTorque, stress }, uncertainty, measured.coverageFactor),
      beyondReadings: torque > topTorque,
      operands: { dragTorque, topTorque, targetStress: stress, topStress },
    });
  });
}

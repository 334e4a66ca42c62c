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
export interface SettingResult {
  readonly torque: number; // N·m
  readonly stress: number; // Pa, the target
  readonly standardUncertainty: number; // Pa, of the stress reached
  readonly expandedUncertainty: number; // Pa, 95 %
  readonly low: number; // Pa
  readonly high: number; // Pa
  readonly torqueUncertainty: number; // N·m: the expanded uncertainty as the wrench sees it
  readonly beyondReadings: boolean; // above the top torque of the series
  readonly operands: {
    readonly dragTorque: number; // N·m
    readonly topTorque: number; // N·m
    readonly targetStress: number; // Pa
    readonly topStress: number; // Pa
  };
}

/** The target stress, Pa. */
export const knownTarget = ({ target }: Worksheet) =>
  knownInputs({ stress: ['target.stress', target.stress] });

/** Dial stretch σ*·L₀/E for the target stress. */
export function worksheetExpectedStretch(worksheet: Worksheet): Outcome<ExpectedStretchResult> {
  const { band, rig, target } = worksheet;
  const known = knownInputs({
    stress: ['target.stress', target.stress],
    gaugeLength: ['rig.gaugeLength', rig.gaugeLength],
    youngsModulus: ['band.youngsModulus', band.youngsModulus],
  });
  return whenReady({ known }, ({ known: operands }) =>
    ready({ stretch: elongation(operands), operands }),
  );
}

/** Torque M* = M_d + (M_top − M_d)·σ* / σ_top. */
export function worksheetSetting(
  worksheet: Worksheet,
  measuredOutcome: Outcome<MeasuredResult>,
): Outcome<SettingResult> {
  const needs = { measured: measuredOutcome, target: knownTarget(worksheet) };
  return whenReady(needs, ({ measured, target: { stress } }) => {
    const { dragTorque, topTorque, stress: topStress } = measured;
    const known = { dragLoad: dragTorque, topLoad: topTorque, topStress };
    const torque = settingForStress(known, stress);
    const standardUncertainty = stress * relativeDoubt(measured, torque);
    const expandedUncertainty = measured.coverageFactor * standardUncertainty;
    return ready({
      torque,
      stress,
      standardUncertainty,
      expandedUncertainty,
      low: stress - expandedUncertainty,
      high: stress + expandedUncertainty,
      torqueUncertainty: expandedUncertainty / measured.slope,
      beyondReadings: torque > topTorque,
      operands: { dragTorque, topTorque, targetStress: stress, topStress },
    });
  });
}

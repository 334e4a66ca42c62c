/**
 * The torque for the worksheet's target stress: from the reader's own readings, and from the screw
 * alone; and what the dial should then show.
 * Units: SI only (N·m, Pa, m).
 * Source: proportion above the drag torque, derived in same-band.ts; a wrench repeats to 1 %, common
 * practice, no source.
 */
import { elongation } from './elasticity.ts';
import { settingForStress } from './same-band.ts';
import { torqueForStress } from './tensioner.ts';
import { boxes } from './worksheet-boxes.ts';
import type { Worksheet } from './worksheet-form.ts';
import type { MeasuredResult } from './worksheet-measured.ts';
import type { Outcome } from './worksheet-outcome.ts';
import { ready, whenReady } from './worksheet-outcome.ts';
import type { RailedStress } from './worksheet-rails.ts';
import { withinRails } from './worksheet-rails.ts';
import type { ChainOperands, Theory } from './worksheet-theory.ts';
import { worksheetPredicted } from './worksheet-theory.ts';
import type { ZeroResult } from './worksheet-zero.ts';

/** What the rails need to know beside the stress. */
export type RailContext = Pick<RailedStress, 'section' | 'strands' | 'screw'>;

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

/** The torque by the screw alone; `low` and `high` are stresses, ± 2 u. */
export interface TheorySettingResult {
  readonly torque: number; // N·m
  readonly stress: number; // Pa, the target
  readonly standardUncertainty: number; // Pa, of the stress reached
  readonly expandedUncertainty: number; // Pa, twice
  readonly low: number; // Pa
  readonly high: number; // Pa
  readonly torqueLow: number; // N·m, at the best efficiency believed
  readonly torqueHigh: number; // N·m, at the worst
  readonly operands: ChainOperands & { readonly targetStress: number };
}

const targetBox = ({ target }: Worksheet) => boxes({ stress: ['target.stress', target.stress] });

/** Dial stretch σ*·L₀/E for the target stress. */
export function worksheetExpectedStretch(worksheet: Worksheet): Outcome<ExpectedStretchResult> {
  const { band, rig, target } = worksheet;
  const known = boxes({
    stress: ['target.stress', target.stress],
    gaugeLength: ['rig.gaugeLength', rig.gaugeLength],
    youngsModulus: ['band.youngsModulus', band.youngsModulus],
  });
  return whenReady({ known }, ({ known: { ready: _, ...operands } }) =>
    ready({ stretch: elongation(operands), operands }),
  );
}

/** Torque M* = M_d + (M_top − M_d)·σ*/σ_top; refused with the code of the rail where one stops it. */
export function worksheetSetting(
  worksheet: Worksheet,
  zeroOutcome: Outcome<ZeroResult>,
  measuredOutcome: Outcome<MeasuredResult>,
  context: RailContext,
): Outcome<SettingResult> {
  const needs = { zero: zeroOutcome, measured: measuredOutcome, target: targetBox(worksheet) };
  return whenReady(needs, ({ zero, measured, target: { stress } }) => {
    const { dragTorque } = zero;
    const { topTorque, stress: topStress } = measured;
    const operands = { dragTorque, topTorque, targetStress: stress, topStress };
    const torque = settingForStress({ dragLoad: dragTorque, topLoad: topTorque, topStress }, stress);
    const standardUncertainty = stress * settingDoubt(worksheet, measured, torque - dragTorque);
    const expandedUncertainty = measured.coverageFactor * standardUncertainty;
    return withinRails(worksheet, { stress, expandedUncertainty, ...context }, 'target.stress', {
      torque,
      stress,
      standardUncertainty,
      expandedUncertainty,
      low: stress - expandedUncertainty,
      high: stress + expandedUncertainty,
      torqueUncertainty: expandedUncertainty / measured.slope,
      beyondReadings: torque > topTorque,
      operands,
    });
  });
}

/**
 * The setting for another band on the worksheet's mill, by the screw's own efficiency.
 * Units: SI only (N·m, Pa, m, m²).
 * Source: M′ = M_d + σ′·l·A′·cos β/(π·adv·e), derived in tensioner.ts.
 */
import { elongation } from '../../elasticity.ts';
import { torqueForStress } from '../../screw/tensioner.ts';
import { relativeDoubt } from '../doubt.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import type { SectionResult } from '../predict/section.ts';
import { areaDoubt, worksheetBody } from '../predict/section.ts';
import type { ChainOperands } from '../predict/theory.ts';
import type { EfficiencyResult } from './efficiency.ts';

/** The other band's torque, and what the dial should show on it in the same rig. */
export interface OtherBandResult {
  readonly torque: number; // N·m
  readonly stress: number; // Pa, its target
  readonly standardUncertainty: number; // Pa, of the stress reached
  readonly expandedUncertainty: number; // Pa, 95 %
  readonly low: number; // Pa
  readonly high: number; // Pa
  readonly stretch: number; // m expected on the dial
  readonly topTorque: number; // N·m, of the readings
  readonly operands: ChainOperands & { readonly targetStress: number };
}

/** What this mill and its own band have shown. */
export interface OwnResults {
  readonly section: Outcome<SectionResult>;
  readonly measured: Outcome<MeasuredResult>;
  readonly efficiency: Outcome<EfficiencyResult>;
}

/** Section of the other band; waits for `otherBand` while there is none. */
export function worksheetOtherSection({ otherBand, band }: Worksheet): Outcome<SectionResult> {
  return otherBand
    ? worksheetBody('otherBand', otherBand, band.thicknessFrom)
    : { ready: false, waitsFor: ['otherBand'] };
}

/** Setting for the other band, at the first one's stress unless it has its own; waits for `otherBand` while there is none. */
export function worksheetOtherBand(
  worksheet: Worksheet,
  own: OwnResults,
): Outcome<OtherBandResult> {
  const { otherBand, band, rig, target } = worksheet;
  if (otherBand === undefined) return { ready: false, waitsFor: ['otherBand'] };
  const other = worksheetOtherSection(worksheet);
  const known = knownInputs({
    stress: ['otherBand.targetStress', otherBand.targetStress ?? target.stress],
    youngsModulus: ['band.youngsModulus', band.youngsModulus],
    gaugeLength: ['rig.gaugeLength', rig.gaugeLength],
  });
  const { section, measured, efficiency } = own;
  return whenReady({ other, known, section, measured, efficiency }, (all) => {
    const { stress } = all.known;
    const { efficiency: ownEfficiency, operands: slope } = all.efficiency;
    const operands = {
      advantage: slope.advantage,
      efficiency: ownEfficiency,
      dragTorque: all.measured.dragTorque,
      lead: slope.lead,
      area: all.other.area,
      strandHalfAngle: slope.strandHalfAngle,
    };
    const torque = torqueForStress(operands, operands, stress);
    const relative = Math.hypot(
      relativeDoubt(all.measured, torque),
      areaDoubt(all.section.operands),
      areaDoubt(all.other.operands),
    );
    const expandedUncertainty = all.measured.coverageFactor * relative * stress;
    return ready({
      torque,
      stress,
      standardUncertainty: relative * stress,
      expandedUncertainty,
      low: stress - expandedUncertainty,
      high: stress + expandedUncertainty,
      stretch: elongation(all.known),
      topTorque: all.measured.topTorque,
      operands: { ...operands, targetStress: stress },
    });
  });
}

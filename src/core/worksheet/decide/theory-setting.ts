/**
 * The torque for the worksheet's target stress by the screw alone, without any reading.
 * Units: SI only (N·m, Pa).
 * Source: M = M_d + Fw·l/(2π·e·adv), derived in tensioner.ts.
 */
import { coverage } from '../../assumptions.ts';
import { torqueForStress } from '../../screw/tensioner.ts';
import { worksheetBudget } from '../budget.ts';
import type { Worksheet } from '../inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import type { ScrewModel } from '../predict/screw-model.ts';
import type { ChainOperands, Theory } from '../predict/theory.ts';
import { knownTarget } from './setting.ts';

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

/** Torque M = M_d + σ*·l·A·cos β/(π·adv·e) at the middle efficiency, with what the screw may make of it. */
export function worksheetTheorySetting(
  worksheet: Worksheet,
  theoryOutcome: Outcome<Theory>,
  screwOutcome: Outcome<ScrewModel>,
): Outcome<TheorySettingResult> {
  const needs = { theory: theoryOutcome, target: knownTarget(worksheet), screw: screwOutcome };
  return whenReady(needs, ({ theory: { operands, ...chain }, target: { stress }, screw }) => {
    const torqueAt = (efficiency: number) =>
      torqueForStress({ ...operands, efficiency }, operands, stress);
    const torque = torqueAt(operands.efficiency);
    const { standardUncertainty } = worksheetBudget(chain.stressOf, chain.inputsAt(torque));
    const expandedUncertainty = coverage.factor * standardUncertainty;
    return ready({
      torque,
      stress,
      standardUncertainty,
      expandedUncertainty,
      low: stress - expandedUncertainty,
      high: stress + expandedUncertainty,
      torqueLow: torqueAt(screw.efficiencyHigh),
      torqueHigh: torqueAt(screw.efficiencyLow),
      operands: { ...operands, targetStress: stress },
    });
  });
}

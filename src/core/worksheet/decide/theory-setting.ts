/**
 * The torque for a target stress by screw or cylinder alone, without any reading: for the worksheet's own band and for others.
 * Units: SI only (N·m, Pa).
 * Source: x = x₀ + σ·s·A/(adv·k·e), derived in predict/pull.ts.
 */
import { coverage } from '../../assumptions.ts';
import { worksheetBudget } from '../budget.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import { loadForStress } from '../predict/pull.ts';
import type { ChainOperands, Theory } from '../predict/theory.ts';
import type { TargetStress } from './setting.ts';
import { type SettingReach, settingReach } from './setting-reach.ts';

/** The torque by the screw alone; stresses and torques ± 2 u, of everything that it hangs on. */
export interface TheorySettingResult extends SettingReach {
  readonly torque: number; // N·m
  readonly operands: ChainOperands & { readonly targetStress: number };
}

/** Load x = x₀ + σ*·s·A/(adv·k·e) at the middle efficiency, with all that is not known of the chain. */
export function worksheetTheorySetting(
  theoryOutcome: Outcome<Theory>,
  targetOutcome: Outcome<TargetStress>,
): Outcome<TheorySettingResult> {
  const needs = { theory: theoryOutcome, target: targetOutcome };
  return whenReady(needs, ({ theory: { operands, ...chain }, target: { stress } }) => {
    const { dragTorque } = operands;
    const torque = loadForStress(operands, stress);
    const { standardUncertainty } = worksheetBudget(chain.stressOf, chain.inputsAt(torque));
    return ready({
      torque,
      ...settingReach({ torque, dragTorque, stress }, standardUncertainty, coverage.factor),
      operands: { ...operands, targetStress: stress },
    });
  });
}

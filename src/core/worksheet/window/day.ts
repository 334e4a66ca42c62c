/**
 * What a check of the setting should show before the first cut and with the band warm from the work.
 * Units: SI only (Pa, N·m, K).
 * Source: physics of `core/drift.ts` for a band that warms alone: −E·α·ΔT on rigid centres, less by what frame and
 * springs give; derived here.
 */
import { thermalExpansion } from '../../assumptions.ts';
import type { SettingResult } from '../decide/setting.ts';
import type { TheorySettingResult } from '../decide/theory-setting.ts';
import type { TurnsResult } from '../decide/turns.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';

/** One check: the stress, and the torque at which the handle should just move on. */
export interface Check {
  readonly stress: number; // Pa, 0 where the band is slack
  readonly torque: number; // N·m
}

/** The same setting at two times of the day. */
export interface DayResult {
  readonly cold: Check;
  readonly warmLeast: Check; // on rigid centres, or as the counted turns have it
  readonly warmMost: Check; // where a soft support gives all, or as the counted turns have it
  readonly warming: number; // K
  readonly isSupportKnown: boolean; // then least and most are one
}

/** What is set, by readings if there are any, else by the screw alone. */
export interface DaySettings {
  readonly setting: Outcome<SettingResult>;
  readonly theorySetting: Outcome<TheorySettingResult>;
  readonly turns: Outcome<TurnsResult>;
}

/** Parts of the rigid loss that this support leaves, least and most. */
function sharesOf(turns: Outcome<TurnsResult>): readonly [number, number] | undefined {
  if (!turns.ready || turns.supportStiffness === undefined) return undefined;
  const { supportStiffness, bandStiffness } = turns;
  const share = supportStiffness / (bandStiffness + supportStiffness);
  return [share, share];
}

/** Cold and warm; the frame and wheels are taken as cool as in the morning. */
export function worksheetDay(
  { demands, band }: Worksheet,
  { setting, theorySetting, turns }: DaySettings,
): Outcome<DayResult> {
  const known = knownInputs({
    warming: ['demands.warming', demands.warming, 'notNegative'],
    youngsModulus: ['band.youngsModulus', band.youngsModulus],
  });
  const set: Outcome<SettingResult | TheorySettingResult> = setting.ready ? setting : theorySetting;
  return whenReady({ known, set }, ({ known: { warming, youngsModulus }, set }) => {
    const { torque, operands } = set;
    const { dragTorque, targetStress } = operands;
    const loss = youngsModulus * thermalExpansion.steel * warming;
    const shares = sharesOf(turns);
    const [least, most] = shares ?? [0, 1];
    const after = (share: number): Check => {
      const stress = Math.max(0, targetStress - share * loss);
      return { stress, torque: dragTorque + ((torque - dragTorque) * stress) / targetStress };
    };
    return ready({
      cold: { stress: targetStress, torque },
      warmLeast: after(most),
      warmMost: after(least),
      warming,
      isSupportKnown: shares !== undefined,
    });
  });
}

/**
 * The setting for another band on the worksheet's mill, by the efficiency that screw or cylinder have shown.
 * Units: SI only (N·m, Pa, m²).
 * Source: x′ = x₀ + σ′·s·A′/(adv·k·e), derived in predict/pull.ts.
 */
import { rootBetween } from '../../root.ts';
import { relativeDoubt } from '../doubt.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import { loadForStress } from '../predict/pull.ts';
import type { SectionResult } from '../predict/section.ts';
import { areaDoubt } from '../predict/section.ts';
import type { ChainOperands } from '../predict/theory.ts';
import type { EfficiencyResult } from './efficiency.ts';
import type { TargetStress } from './setting.ts';
import { type SettingReach, settingReach } from './setting-reach.ts';

/** The other band's torque, as the readings on the first one have it. */
export interface BandByReadings extends SettingReach {
  readonly torque: number; // N·m
  readonly topTorque: number; // N·m, of the readings
  readonly beyondReadings: boolean; // above it
  readonly operands: ChainOperands & { readonly targetStress: number };
}

/** What this mill and its own band have shown. */
export interface OwnResults {
  readonly section: Outcome<SectionResult>;
  readonly measured: Outcome<MeasuredResult>;
  readonly efficiency: Outcome<EfficiencyResult>;
}

/** Torque for a target on another section; the sections of both bands add to what is not known. */
export function bandByReadings(
  target: Outcome<TargetStress>,
  other: Outcome<SectionResult>,
  own: OwnResults,
): Outcome<BandByReadings> {
  return whenReady({ target, other, ...own }, (all) => {
    const { stress } = all.target;
    const { topTorque, dragTorque, coverageFactor } = all.measured;
    const { slope: _, ...shown } = all.efficiency.operands;
    const operands = {
      ...shown,
      efficiency: all.efficiency.efficiency,
      dragTorque,
      area: all.other.area,
    };
    const torque = loadForStress(operands, stress);
    const relative = Math.hypot(
      relativeDoubt(all.measured, torque),
      areaDoubt(all.section.operands),
      areaDoubt(all.other.operands),
    );
    return ready({
      torque,
      ...settingReach({ torque, dragTorque, stress }, relative * stress, coverageFactor),
      topTorque,
      beyondReadings: torque > topTorque,
      operands: { ...operands, targetStress: stress },
    });
  });
}

const LEAST_SHARE = 1e-3; // of what is allowed: a limit within the uncertainty of a slack band tells nothing

/** The highest load whose stress on another section stays, its uncertainty included, within what is allowed, Pa; undefined while nothing tells it. */
export function allowedByReadings(
  allowed: number,
  other: Outcome<SectionResult>,
  own: OwnResults,
): number | undefined {
  const set = (stress: number) => bandByReadings(ready({ stress }), other, own);
  const beyond = (stress: number): number => {
    const reached = set(stress);
    return reached.ready ? reached.high - allowed : Number.NaN;
  };
  const least = LEAST_SHARE * allowed;
  if (!(beyond(least) < 0)) return undefined;
  const highest = set(rootBetween(beyond, least, allowed));
  return highest.ready ? highest.torque : undefined;
}

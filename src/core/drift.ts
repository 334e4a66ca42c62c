/**
 * What warmth does to the tension, and what it feigns on the measuring bar.
 * Units: SI only (m, N, N/m, Pa, K, 1/K, rad).
 * Source: derived here from thermal growth and springs in series (Hibbeler, Mechanics of Materials,
 * 4.6, from memory).
 */
import { assertAtLeast, assertBetween, assertPositive } from './assert.ts';
import { strandForceAtWheel, strandShare, strandStress } from './section.ts';

/**
 * A part that warms; the change counts from the moment of the zero, it is no temperature itself.
 */
export interface WarmedPart {
  readonly expansion: number; // 1/K
  readonly temperatureChange: number; // K, −60 to 60
}

/** Band, frame and wheels with the stiffnesses seen at the wheel. */
export interface WarmedMill {
  readonly bandStiffness: number; // N/m
  readonly supportStiffness: number; // N/m; infinite: rigid; 0: weight or constant pressure
  readonly strandHalfAngle?: number; // rad, 0 unless given
  readonly band: WarmedPart & { readonly loopLength: number }; // m
  readonly frame: WarmedPart & { readonly centreDistance: number }; // m
  readonly wheels: WarmedPart & { readonly diameter: number }; // m, mean of the two
}

/** Growth per length ε = α·ΔT, no unit. */
function growth(name: string, { expansion, temperatureChange }: WarmedPart): number {
  assertAtLeast(`${name} expansion`, expansion, 0, '1/K');
  assertBetween(`${name} temperatureChange`, temperatureChange, -60, 60, 'K');
  return expansion * temperatureChange;
}

/**
 * Slack in m that warmth gives at the wheel: α·L·ΔT/(2cos β) of the band, less α·C·ΔT of the frame
 * and (π/2)·α·D·ΔT/cos β of the wheels; positive where the band grows more.
 * @throws RangeError unless lengths are above 0 and changes within ±60 K
 */
export function thermalSlack(
  mill: Pick<WarmedMill, 'strandHalfAngle' | 'band' | 'frame' | 'wheels'>,
): number {
  const { band, frame, wheels, strandHalfAngle = 0 } = mill;
  assertPositive('loopLength', band.loopLength, 'm');
  assertPositive('centreDistance', frame.centreDistance, 'm');
  assertPositive('diameter', wheels.diameter, 'm');
  const lean = strandShare(strandHalfAngle);
  const byBand = (growth('band', band) * band.loopLength) / (2 * lean);
  const byFrame = growth('frame', frame) * frame.centreDistance;
  const byWheels = ((Math.PI / 2) * growth('wheels', wheels) * wheels.diameter) / lean;
  return byBand - byFrame - byWheels;
}

/**
 * Change of the wheel force −x·k_b·k_sup/(k_b + k_sup) in N, negative where the band loses tension;
 * nil under a weight or constant pressure.
 * @throws RangeError unless bandStiffness > 0, supportStiffness ≥ 0, and as `thermalSlack`
 */
export function wheelForceDrift(mill: WarmedMill): number {
  const { bandStiffness, supportStiffness } = mill;
  assertPositive('bandStiffness', bandStiffness, 'N/m');
  assertBetween('supportStiffness', supportStiffness, 0, Number.POSITIVE_INFINITY, 'N/m');
  return -thermalSlack(mill) / (1 / bandStiffness + 1 / supportStiffness);
}

/**
 * The same as stress in the strands, ΔF/(2A·cos β) in Pa; −E·α·ΔT on rigid centres.
 * @throws RangeError unless area > 0 m², and as `wheelForceDrift`
 */
export function stressDrift(mill: WarmedMill, area: number): number {
  return strandStress(strandForceAtWheel(wheelForceDrift(mill), mill.strandHalfAngle), area);
}

/** What one setting shows once the mill has warmed or cooled, Pa, 0 or more. */
export interface SettingChecks {
  /** Checked as it was set, the mill as cold or warm as then. */
  readonly cold: number;
  /** The same setting, untouched, on the warmed mill; 0 where the band hangs slack. */
  readonly warm: number;
  /** Had it been brought back to the setting on the warmed mill, and the mill then gone back. */
  readonly tightenedWarm: number;
}

/**
 * What a check cold and a check warm should show of one `setting` in Pa, and what tightening at the
 * warm check leaves once the mill is cold again: σ, σ + Δσ and σ − Δσ, with Δσ of `stressDrift`.
 * @throws RangeError unless setting > 0 Pa, and as `stressDrift`
 */
export function settingChecks(setting: number, mill: WarmedMill, area: number): SettingChecks {
  assertPositive('setting', setting, 'Pa');
  const drift = stressDrift(mill, area);
  const tight = (stress: number) => Math.max(0, stress); // a band cannot push
  return { cold: setting, warm: tight(setting + drift), tightenedWarm: tight(setting - drift) };
}

/**
 * Stress that the dial feigns, E·(α_band·ΔT_band − α_bar·ΔT_bar) in Pa: nil where bar and band grow
 * alike, below 0 where the bar grows more.
 * @throws RangeError unless youngsModulus > 0 Pa and changes within ±60 K
 */
export function apparentStressThermal({
  youngsModulus,
  band,
  bar,
}: {
  readonly youngsModulus: number; // Pa
  readonly band: WarmedPart;
  readonly bar: WarmedPart;
}): number {
  assertPositive('youngsModulus', youngsModulus, 'Pa');
  return youngsModulus * (growth('band', band) - growth('bar', bar));
}

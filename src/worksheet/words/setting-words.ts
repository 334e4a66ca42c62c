/**
 * What is said about a setting: which torque to use, and what to do before one is relied on.
 * Units: SI in, the reader's out.
 */
import type { BandSetting, SettingReach, WorksheetResults } from '../../core/worksheet.ts';
import { amountOf } from '../../units/conversions.ts';
import { FACTORS } from '../../units/factors.ts';
import { formatNumber, THIN_SPACE } from '../../units/format-number.ts';
import { displayOf } from '../../units/kinds.ts';
import type { Shown } from '../state/shown.ts';

/** Which of the two torques to use, and why; nothing while there is none. */
export function whichTorque(
  { setting, theorySetting }: Pick<WorksheetResults, 'setting' | 'theorySetting'>,
  { load: { name, by } }: Shown,
): string | undefined {
  const cancels = name === 'torque' ? 'friction, lead and section' : 'seal, gauge and section';
  if (setting.ready)
    return `Use the ${name} by your readings: in it ${cancels} cancel. The ${name} by the ${by} alone only checks it.`;
  if (theorySetting.ready)
    return `Until you have readings, use the ${name} by the ${by} alone. Its range is wide because nobody knows ${name === 'torque' ? 'the friction' : 'seal and gauge'}; readings make it narrow.`;
  return undefined;
}

interface Beyond {
  readonly torque: number; // N·m
  readonly beyondReadings: boolean;
}

/** What to do first where a torque is above the highest reading. */
export const provisionalWords = (
  { torque, beyondReadings }: Beyond,
  { quantity, load }: Shown,
): string | undefined =>
  beyondReadings ? `Provisional: measure up to ${quantity(torque, load.name)} first.` : undefined;

/** The stress that a torque gives, and the torques that the target may need. */
export const reachWords = (reach: SettingReach, { plusMinus, range, load }: Shown) => ({
  gives: plusMinus(reach.stress, reach.expandedUncertainty, 'stress'),
  needs: range(reach.torqueLow, reach.torqueHigh, load.name),
});

/** What another band is called. */
export const bandName = ({ name }: Pick<BandSetting, 'name'>, place: number): string =>
  name || `Other band ${place + 1}`;

/** What dial and turns say at another band's setting, as far as they are known. */
export function bandDialAndTurns(
  { stretch, turns }: Pick<BandSetting, 'stretch' | 'turns'>,
  { quantity, plusMinus }: Shown,
): string {
  const dial = stretch.ready
    ? [`From the zero of a series the dial should move ${quantity(stretch.stretch, 'stretch')}.`]
    : [];
  const counted = turns.ready
    ? [
        `By turns: from a mark at ${quantity(turns.markedTorque, 'torque')} turn on by ${plusMinus(turns.turns, turns.expandedUncertainty, 'turns')}.`,
      ]
    : [];
  return [...dial, ...counted].join(' ');
}

/** A torque in the small unit of many wrenches in the US, rounded as it is in the large one; nothing elsewhere. */
export function inchPounds(torque: number, { system, load }: Shown): string | undefined {
  if (system !== 'us' || load.name !== 'torque') return undefined;
  const amount = formatNumber(
    amountOf(torque, FACTORS['in·lbf']),
    displayOf('torque', 'us').rounding,
  );
  return `${amount}${THIN_SPACE}in·lbf`;
}

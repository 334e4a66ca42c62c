/**
 * What is said about a setting at length: which torque to use, and what dial and turns should say there.
 * Units: SI in, the reader's out.
 */
import type { BandSetting, WorksheetResults } from '../../core/worksheet.ts';
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

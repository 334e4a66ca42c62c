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
    return `Use the ${name} from your readings: ${cancels} cancel in it. The ${name} from the ${by} alone is only a check.`;
  if (theorySetting.ready)
    return `Until you have readings, use the ${name} from the ${by} alone. Its range is wide because nobody knows ${name === 'torque' ? 'the friction' : 'seal and gauge'}; readings make it narrow.`;
  return undefined;
}

/** What dial and turns say at another band's setting, as far as they are known. */
export function bandDialAndTurns(
  { stretch, turns }: Pick<BandSetting, 'stretch' | 'turns'>,
  { quantity, plusMinus, load }: Shown,
): string {
  const dial = stretch.ready
    ? [`The dial should move ${quantity(stretch.stretch, 'stretch')} from zero tension.`]
    : [];
  const counted = turns.ready
    ? [
        `By turns: tighten to ${quantity(turns.markedTorque, load.name)}, mark the handle there, then turn it ${plusMinus(turns.turns, turns.expandedUncertainty, 'turns')} more.`,
      ]
    : [];
  return [...dial, ...counted].join(' ');
}

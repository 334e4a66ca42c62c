/**
 * What the dial itself will show at the setting, written as the readings are.
 * Units: SI in, the reader's out.
 */
import type { WorksheetResults } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';

type DialSetting = Extract<WorksheetResults['dialSetting'], { ready: true }>;

/** One reading, with its whole turns where they are noted apart. */
function reading({ dial, wholeTurns }: DialSetting['each'][number], { quantity }: Shown): string {
  const turns =
    wholeTurns === 0 ? '' : ` with ${wholeTurns} in “turns of the hand”`.replace('-', '−');
  return quantity(dial, 'stretch') + turns;
}

/** The sentence about it, for each series; nothing while there is no setting. */
export function dialNotes(
  outcome: WorksheetResults['dialSetting'] | undefined,
  shown: Shown,
): readonly string[] {
  if (!outcome?.ready) return [];
  const { each } = outcome;
  const clamped = 'If bar and dial are still clamped as';
  if (each.length < 2)
    return [`${clamped} for these readings, the dial will show ${reading(outcome, shown)}.`];
  return each.map(
    (one) => `${clamped} for series ${one.series}, the dial will show ${reading(one, shown)}.`,
  );
}

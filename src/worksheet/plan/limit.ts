/** What the makers allow, held against the top of the plan on the sheet. */
import type { PlanAnswer } from '../state/answers.ts';
import type { SheetView } from '../state/view.ts';
import { tooHighSentence } from '../words/plan-words.ts';
import { plannedOn } from './questions.ts';

/** Whether a maker's limit is filled in. */
export function hasLimit(sheet: SheetView): boolean {
  const { makerLimitStress, makerLimitWheelForce } = sheet.worksheet()?.target ?? {};
  return makerLimitStress !== undefined || makerLimitWheelForce !== undefined;
}

/** The sentence against a top that is too high; none while it is not, or not known to be. */
export function limitSentence(
  sheet: SheetView,
  answer: PlanAnswer | undefined,
): string | undefined {
  const planned = plannedOn(sheet);
  const top = typeof planned === 'object' ? planned.topTorque : undefined;
  if (!answer?.tooHigh || top === undefined) return undefined;
  return tooHighSentence(answer.tooHigh, top, sheet.shown());
}

/** What is held against the top of the plan on the sheet: what the makers allow, what the steel bears, what others do. */
import type { PlanAnswer } from '../state/answers.ts';
import type { SheetView } from '../state/view.ts';
import { type TooHigh, tooHighSentences, topSentence } from '../words/plan-words.ts';
import { plannedOn } from './questions.ts';

/** Whether a maker's limit is filled in. */
export function hasLimit(sheet: SheetView): boolean {
  const { makerLimitStress, makerLimitWheelForce } = sheet.worksheet()?.target ?? {};
  return makerLimitStress !== undefined || makerLimitWheelForce !== undefined;
}

function topOf(sheet: SheetView): number | undefined {
  const planned = plannedOn(sheet);
  return typeof planned === 'object' ? planned.topTorque : undefined;
}

/** What is wrong with a top that is too high; empty while it is not, or not known to be. */
export const tooHighOn = (sheet: SheetView, answer: PlanAnswer | undefined): readonly TooHigh[] =>
  answer ? tooHighSentences(answer, topOf(sheet), sheet.shown()) : [];

/** What the band carries at the top; nothing while that is not known. */
export const topOn = (sheet: SheetView, answer: PlanAnswer | undefined): string | undefined =>
  answer && topSentence(answer, topOf(sheet), sheet.shown());

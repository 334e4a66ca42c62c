/** What could be changed in a plan for a measurement. */
import type { PlanChange } from '../../core/plan.ts';

/** Each change as an offer. */
export const PLAN_CHANGES: Readonly<Record<PlanChange, string>> = {
  secondSeries: 'a second series',
  thirdSeries: 'a third series',
  longerBar: 'a longer bar',
  finerDial: 'a dial twice as fine',
  moreSteps: 'half as many steps again',
  startAtTenth: 'a start at a tenth of the load',
};

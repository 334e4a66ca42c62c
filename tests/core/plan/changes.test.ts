/** What could be changed in a plan, and what helps most. */
import { describe, expect, it } from 'vitest';
import { bestFirst, planChanges } from '../../../src/core/plan/changes.ts';
import { type MeasurementPlan, planOutcome } from '../../../src/core/plan.ts';

const plan: MeasurementPlan = {
  gaugeLength: 0.4,
  graduation: 1e-5,
  readTo: 5e-6,
  firstShare: 0.1,
  steps: 9,
  series: 1,
  stressAtTop: 110e6,
  youngsModulus: 205e9,
};

describe('the changes of a plan', () => {
  const reachedBy = ({ plan: changed }: { readonly plan: MeasurementPlan }) =>
    planOutcome(changed, 60, 1);

  it('change one thing each, and the best comes first', () => {
    const changes = planChanges({ ...plan, firstShare: 0.03 }, 0.6);
    const variants = bestFirst(changes.map((each) => ({ ...each, outcome: reachedBy(each) })));
    expect(variants.map(({ change }) => change).sort()).toEqual([
      ...['finerDial', 'longerBar', 'moreSteps', 'secondSeries', 'startAtTenth', 'thirdSeries'],
    ]);
    const widths = variants.map(({ outcome }) => outcome.nineOfTen as number);
    expect(widths).toEqual([...widths].sort((a, b) => a - b));
    const { plan: longer } = variants.find(({ change }) => change === 'longerBar') ?? {};
    expect(longer).toEqual({ ...plan, firstShare: 0.03, gaugeLength: 0.6 });
  });

  it('keep the loads of a series unless its steps or its start are changed', () => {
    const loads = [0.03, 0.15, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9, 1];
    const changes = planChanges({ ...plan, firstShare: 0.03, loads }, 0.6);
    const without = changes.filter(({ plan: changed }) => changed.loads === undefined);
    expect(without.map(({ change }) => change)).toEqual(['moreSteps', 'startAtTenth']);
    for (const { plan: changed } of changes) expect([loads, undefined]).toContain(changed.loads);
  });

  it('that give a stress most often come before others without a number', () => {
    const outcome = (givesStress: number, nineOfTen?: number) => ({
      outcome: { median: undefined, nineOfTen, givesStress },
    });
    const [seldom, often, known] = [outcome(0.2), outcome(0.6), outcome(0.95, 0.3)];
    expect(bestFirst([seldom, often, known])).toEqual([known, often, seldom]);
  });

  it('leave out what the plan has already', () => {
    const full = { ...plan, series: 3, gaugeLength: 0.7, steps: 30 };
    expect(planChanges(full, 0.6).map(({ change }) => change)).toEqual(['finerDial']);
  });
});

/** Plans are tried only while someone looks at them, after typing rests, the one on the sheet first. */
import { signal } from '@preact/signals-core';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { FieldPath } from '../../../src/form/paths.ts';
import { setOpen } from '../../../src/worksheet/folds/open-parts.ts';
import { plannerOf } from '../../../src/worksheet/plan/planner.ts';
import { plannedOn } from '../../../src/worksheet/plan/questions.ts';
import {
  type Answers,
  answerTo,
  type PlanAnswer,
  type Question,
} from '../../../src/worksheet/state/answers.ts';
import type { Start } from '../../../src/worksheet/state/asker.ts';
import { apply, emptyProject, type Project } from '../../../src/worksheet/state/project.ts';
import { reckon } from '../../../src/worksheet/state/results.ts';
import { viewOf } from '../../../src/worksheet/state/view.ts';

const type = (project: Project, path: FieldPath, text: string) =>
  apply(project, { do: 'type', path, text });

/** A sheet with a target and a worker that answers when told to; short plans, so that they are soon tried. */
function bench() {
  const start = type(emptyProject('metric'), 'plan.steps', '6');
  const project = signal(type(start, 'target.stress', '110'));
  const asked: Question[] = [];
  const waiting: ((answers?: Answers) => void)[] = [];
  const inTurn: Start = (answered) => ({
    ask: (question) => {
      asked.push(question);
      waiting.push((answers) => answered(answers ?? answerTo(question)));
    },
    end: () => void waiting.splice(0),
  });
  const sheet = viewOf({ project, reckoning: reckon(project, inTurn) });
  setOpen(sheet.openParts, 'rig', true);
  const turn = () => waiting.shift()?.();
  const turnTo = (answers: Answers) => waiting.shift()?.(answers);
  while (waiting.length > 0) turn();
  const plans = () => asked.filter((question) => question.about === 'plan');
  const set = (path: FieldPath, text: string) => {
    project.value = type(project.value, path, text);
  };
  const keyOut = () => plans().at(-1)?.key ?? '';
  const isIdle = () => waiting.length === 0;
  return { sheet, planner: plannerOf(sheet), turn, turnTo, keyOut, plans, set, isIdle };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('plans', () => {
  it('are not tried while the fold, or its part, is closed', () => {
    const { sheet, plans, planner } = bench();
    vi.advanceTimersByTime(10_000);
    setOpen(sheet.openParts, 'rig', false);
    sheet.isPlanning.value = true;
    vi.advanceTimersByTime(10_000);
    expect([plans(), planner.plan.value]).toEqual([[], undefined]);
  });

  it('are tried once nothing has been typed for a while: the own one, then each change', () => {
    const { sheet, plans, planner, set, turn, turnTo, keyOut, isIdle } = bench();
    sheet.isPlanning.value = true;
    vi.advanceTimersByTime(400);
    set('plan.series', '2');
    vi.advanceTimersByTime(499);
    expect(plans()).toEqual([]);
    vi.advanceTimersByTime(1);
    const { own, offers } = planner.plan.value ?? expect.fail();
    expect(plans()).toEqual([own]);
    turn();
    const tried = planner.answerTo(own);
    while (!isIdle()) turnTo({ plan: { ...tried, key: keyOut() } });
    expect(plans()).toEqual([own, ...offers.map(({ question }) => question)]);
    expect(tried).toMatchObject({
      stressAtTop: 110e6,
      outcome: { givesStress: expect.any(Number), nineOfTen: expect.any(Number) },
    });
    expect(offers.map(({ change }) => change)).toEqual([
      'thirdSeries',
      'longerBar',
      'finerDial',
      'moreSteps',
    ]);
    for (const { question } of offers) expect(planner.answerTo(question)).toBeDefined();
  });

  it('make way for what is typed, and are taken up again', () => {
    const { sheet, plans, set, turn } = bench();
    sheet.isPlanning.value = true;
    vi.advanceTimersByTime(500);
    expect(plans()).toHaveLength(1);
    set('band.bodyWidth', '29');
    turn(); // the results, which broke the plan off
    expect(plans()).toHaveLength(1);
    vi.advanceTimersByTime(500);
    expect(plans()).toHaveLength(2);
  });

  it('have no outcome where the stress at the top is not known', () => {
    const { sheet, planner, set, turn, isIdle } = bench();
    set('target.stress', '');
    sheet.isPlanning.value = true;
    while (!isIdle()) turn();
    vi.advanceTimersByTime(500);
    turn();
    const { own } = planner.plan.value ?? expect.fail();
    expect(planner.answerTo(own)).toEqual({ key: own.key });
  });

  it('go no higher than the limits where no top is typed', () => {
    const { sheet, planner, set, turn, turnTo, keyOut } = bench();
    const tell = (tooHigh: PlanAnswer['tooHigh']) => {
      vi.advanceTimersByTime(500);
      turnTo({ plan: { key: keyOut(), tooHigh } });
    };
    set('use.torque', '35');
    turn();
    sheet.isPlanning.value = true;
    expect(plannedOn(sheet)).toMatchObject({ topTorque: 35, topFrom: 'use' });
    const guard = { code: 'aboveBandLimit', level: 'stop', values: {}, inputs: [] } as const;
    tell([{ guard, highest: 30.4 }]);
    expect(plannedOn(sheet)).toMatchObject({ topTorque: 30, topFrom: 'limits' });
    expect(planner.plan.value?.own.worksheet.use.torque).toBe(30);
    set('target.stress', '90');
    turn();
    expect(plannedOn(sheet)).toMatchObject({ topTorque: 35, topFrom: 'use' });
    set('plan.topTorque', '36');
    tell([{ guard, highest: 30.4 }]);
    expect(plannedOn(sheet)).toMatchObject({ topTorque: 36, topFrom: 'typed' });
  });
});

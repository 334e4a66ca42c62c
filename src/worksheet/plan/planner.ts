/**
 * Tries plans out in the worker, one after the other: the plan on the sheet while its fold is open, what would help a
 * rough measurement while the readings are. Nothing is asked until typing rests.
 */
import { computed, effect, type ReadonlySignal, signal, untracked } from '@preact/signals-core';
import type { PlanAnswer, PlanQuestion } from '../state/answers.ts';
import { lasting } from '../state/lasting.ts';
import type { SheetView } from '../state/view.ts';
import { holdTop } from './default-top.ts';
import { adviceQuestions, type PlanQuestions, plannedOn, planQuestions } from './questions.ts';

const REST = 500; // ms without a change

/** What is planned and advised on a sheet, and what of it is known. */
export interface Planner {
  readonly plan: ReadonlySignal<PlanQuestions | undefined>;
  readonly advice: ReadonlySignal<PlanQuestions | undefined>;
  readonly answerTo: (question: PlanQuestion) => PlanAnswer | undefined;
}

type Known = ReadonlyMap<string, PlanAnswer>;

const all = (questions: PlanQuestions | undefined): readonly PlanQuestion[] =>
  questions ? [questions.own, ...questions.offers.map(({ question }) => question)] : [];

/** Becomes true when nothing that is read has changed for a while. */
function resting(read: () => void): ReadonlySignal<boolean> {
  const isResting = signal(false);
  effect(() => {
    read();
    isResting.value = false;
    const rest = setTimeout(() => {
      isResting.value = true;
    }, REST);
    return () => clearTimeout(rest);
  });
  return isResting;
}

function startPlanner(sheet: SheetView): Planner {
  const isOpen = (id: 'rig' | 'readings') => sheet.openParts.value.has(id);
  const plan = lasting(() =>
    sheet.isPlanning.value && isOpen('rig') ? planQuestions(sheet) : undefined,
  );
  const advice = lasting(() => (isOpen('readings') ? adviceQuestions(sheet) : undefined));
  const wanted = computed(() => [...all(plan.value), ...all(advice.value)]);
  const known = signal<Known>(new Map());
  const next = lasting(() => wanted.value.find(({ key }) => !known.value.has(key)));
  const isResting = resting(() => [wanted.value, sheet.worksheet()]);
  const holdOwnTop = (answer: PlanAnswer) => {
    const planned = plannedOn(sheet);
    if (typeof planned !== 'object' || !planned.topFrom) return;
    if (plan.value?.own.key === answer.key) holdTop(sheet, planned.topFrom, answer);
  };
  effect(() => {
    const answer = sheet.answers().plan;
    if (!answer || known.peek().has(answer.key)) return;
    untracked(() => holdOwnTop(answer));
    const keys = new Set(wanted.peek().map(({ key }) => key)); // what is no longer wanted is let go
    const kept = [...known.peek()].filter(([key]) => keys.has(key));
    known.value = new Map([...kept, [answer.key, answer]]);
  });
  effect(() => {
    if (next.value && isResting.value) sheet.asker?.ask(next.value);
    else sheet.asker?.forget('plan');
  });
  return { plan, advice, answerTo: ({ key }) => known.value.get(key) };
}

const planners = new WeakMap<SheetView, Planner>();

/** The planner of a sheet; there is one, and it starts when it is first asked for. */
export function plannerOf(sheet: SheetView): Planner {
  const planner = planners.get(sheet) ?? startPlanner(sheet);
  planners.set(sheet, planner);
  return planner;
}

/** What the plan on the sheet reaches; undefined while it is being tried, or cannot be. */
export function ownAnswer(sheet: SheetView): PlanAnswer | undefined {
  const { plan, answerTo } = plannerOf(sheet);
  return plan.value && answerTo(plan.value.own);
}

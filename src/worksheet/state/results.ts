/**
 * The sheet as read, and what it comes to: all results together with the prediction's interval and curve, so that a key
 * changes the page once; the stress by trials after a rest, while somebody looks at it. Each is asked for again only when
 * what it hangs on has changed.
 */
import {
  batch,
  computed,
  effect,
  type ReadonlySignal,
  type Signal,
  signal,
} from '@preact/signals-core';
import { emptyWorksheet, type Worksheet, type WorksheetResults } from '../../core/worksheet.ts';
import { sheetReader, type WorksheetRead } from '../../form/reading.ts';
import { entriesOf } from '../../form/typed.ts';
import type { Answers, Question } from './answers.ts';
import { type AnyAsker, type Start, twoAskers } from './asker.ts';
import { BLANK_RESULTS } from './blank-results.worked.ts';
import { lasting } from './lasting.ts';
import type { Project } from './project.ts';
import { sharing } from './sharing.ts';

const REST = 500; // ms without a change

/** What a project comes to at this moment. */
export interface Reckoning {
  readonly read: ReadonlySignal<WorksheetRead>;
  /** The newest results; undefined until a sheet that was kept has its first ones. */
  readonly results: ReadonlySignal<WorksheetResults | undefined>;
  /** What came after them; each is asked of and followed on its own. */
  readonly answers: SlowAnswers;
  /** Whether somebody looks at the stress by trials: they take up to seconds. */
  readonly wantsTrials: Signal<boolean>;
  /** Whether the results are those of an older sheet than the one that stands there. */
  readonly isBehind: ReadonlySignal<boolean>;
  /** Who is asked about what only some parts of the sheet want to know. */
  readonly asker: AnyAsker;
}

type SlowAnswers = Omit<Answers, 'results'>;

interface Reckoned {
  readonly worksheet: Worksheet;
  readonly results: WorksheetResults;
}

function stressQuestion({ worksheet, results }: Reckoned): Question | undefined {
  const { band, tensioner, rig, readings } = worksheet;
  const hangsOn = { ...emptyWorksheet, band, tensioner, rig, readings };
  return results.measured.ready ? { about: 'stress', worksheet: hangsOn } : undefined;
}

/** The reckoning of a project as it changes. */
export function reckon(project: ReadonlySignal<Project>, start?: Start): Reckoning {
  const readSheet = sheetReader();
  const read = lasting(() => readSheet(project.value.typed, project.value.system));
  const wanted = lasting((): Worksheet => ({ ...read.value.worksheet, label: '' }));
  const first = { worksheet: wanted.peek(), results: BLANK_RESULTS };
  const reckoned = signal<Reckoned | undefined>(
    entriesOf(project.peek().typed).length === 0 ? first : undefined,
  );
  const slow = slowSignals();
  const take = (worksheet: Worksheet, found: Answers) => {
    if (!found.results) return;
    const results = sharing(reckoned.peek()?.results, found.results);
    batch(() => {
      reckoned.value = { worksheet, results };
      slow.prediction.value = sharing(slow.prediction.peek(), found.prediction);
    });
  };
  const asker = twoAskers((answers, question) => {
    if (question.about === 'results') take(question.worksheet, answers);
    else (slow[question.about] as Signal<unknown>).value = answers[question.about];
  }, start);
  const isBehind = computed(() => reckoned.value?.worksheet !== wanted.value);
  effect(() => {
    if (isBehind.value) asker.ask({ about: 'results', worksheet: wanted.value });
  });
  const wantsTrials = signal(false);
  keepStress(
    asker,
    slow.stress,
    lasting(() =>
      wantsTrials.value && reckoned.value ? stressQuestion(reckoned.value) : undefined,
    ),
  );
  const results = computed(() => reckoned.value?.results);
  return { read, results, answers: followed(slow), wantsTrials, isBehind, asker };
}

type Slow = { readonly [About in keyof SlowAnswers]-?: Signal<SlowAnswers[About]> };

const slowSignals = (): Slow => ({
  prediction: signal(undefined),
  stress: signal(undefined),
  plan: signal(undefined),
});

/** The answers as they are now; who looks at one follows that one alone. */
const followed = (slow: Slow): SlowAnswers => ({
  get prediction() {
    return slow.prediction.value;
  },
  get stress() {
    return slow.stress.value;
  },
  get plan() {
    return slow.plan.value;
  },
});

function keepStress(
  asker: AnyAsker,
  answer: Slow['stress'],
  asked: ReadonlySignal<Question | undefined>,
) {
  effect(() => {
    const question = asked.value;
    answer.value = undefined;
    asker.forget('stress');
    if (!question) return undefined;
    const waiting = setTimeout(() => asker.ask(question), REST);
    return () => clearTimeout(waiting);
  });
}

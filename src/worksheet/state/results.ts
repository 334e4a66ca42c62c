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
import {
  emptyWorksheet,
  loadIn,
  loadName,
  type Worksheet,
  type WorksheetResults,
} from '../../core/worksheet.ts';
import { sheetReader, type WorksheetRead } from '../../form/reading.ts';
import { entriesOf } from '../../form/typed.ts';
import { curveTorques } from '../chart/torques.ts';
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

/** Hangs on the torque of the readings, not on what the dial showed: another dial reading asks nothing new. */
function predictionQuestion({ worksheet, results }: Reckoned): Question | undefined {
  const { predicted } = results;
  if (!predicted.ready && !results.points.ready) return undefined;
  const { mill, band, tensioner } = worksheet;
  const load = predicted.ready ? predicted.operands.torque : loadIn(worksheet, worksheet.use);
  const use = { ...emptyWorksheet.use, [loadName(tensioner)]: load };
  const hangsOn = { ...emptyWorksheet, mill, band, tensioner, use };
  return { about: 'prediction', worksheet: hangsOn, torques: curveTorques(results) };
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
  const asker = twoAskers((answers, question) => {
    if (question.about === 'results') taker.takeResults(question.worksheet, answers.results);
    else if (question.about === 'prediction') taker.takePrediction(answers.prediction);
    else (slow[question.about] as Signal<unknown>).value = answers[question.about];
  }, start);
  const taker = new Taker(asker, reckoned, slow.prediction);
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

/** Takes results and predictions as they come. Results wait for the prediction that belongs to them. */
class Taker {
  private readonly asker: AnyAsker;
  private readonly reckoned: Signal<Reckoned | undefined>;
  private readonly prediction: Slow['prediction'];
  private asked: Question | undefined;
  private held: Reckoned | undefined;

  constructor(
    asker: AnyAsker,
    reckoned: Signal<Reckoned | undefined>,
    prediction: Slow['prediction'],
  ) {
    this.asker = asker;
    this.reckoned = reckoned;
    this.prediction = prediction;
  }

  takeResults(worksheet: Worksheet, found: WorksheetResults | undefined): void {
    if (!found) return;
    const results = sharing(this.reckoned.peek()?.results, found);
    const reckoned = { worksheet, results };
    const question = sharing(this.asked, predictionQuestion(reckoned));
    const isNew = question !== this.asked;
    this.asked = question;
    if (question && isNew) {
      this.held = reckoned;
      this.asker.ask(question);
    } else this.show(reckoned, question && this.prediction.peek());
  }

  takePrediction(prediction: SlowAnswers['prediction']): void {
    if (this.held) this.show(this.held, prediction);
  }

  private show(reckoned: Reckoned, prediction: SlowAnswers['prediction']): void {
    this.held = undefined;
    batch(() => {
      this.reckoned.value = reckoned;
      this.prediction.value = prediction;
    });
  }
}

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

/** What the sheet comes to, and the questions it answers. Loaded by the worker, or in its stead. */

import {
  type ChangeablePlan,
  type PlanOutcome,
  planOutcome,
  planRepeats,
} from '../../core/plan.ts';
import type {
  MeasuredResult,
  Outcome,
  PredictedPoint,
  PredictionTrials,
  StressAtLoad,
  StressTrials,
  TopLoadTrouble,
  WorksheetResults,
} from '../../core/worksheet.ts';
import {
  beyondPractice,
  emptyWorksheet,
  loadIn,
  loadName,
  predictedCurve,
  resultsOf,
  stressAtLoad,
  topLoadTroubles,
  trialsOfPrediction,
  trialsOfStress,
  type Worksheet,
  worksheetChain,
  worksheetMeasurement,
  worksheetTrials,
} from '../../core/worksheet.ts';
import { curveTorques } from '../chart/torques.ts';
import { sharing } from './sharing.ts';

/**
 * All results, with the prediction's interval by trials and its course over the torques of the chart; the measured stress
 * by trials; what one plan for a measurement reaches. In this order of haste.
 */
export type Question =
  | { readonly about: 'results'; readonly worksheet: Worksheet }
  | { readonly about: 'stress'; readonly worksheet: Worksheet }
  | PlanQuestion;

/** What a plan reaches; `key` comes back with the answer. */
export interface PlanQuestion {
  readonly about: 'plan';
  readonly key: string;
  readonly worksheet: Worksheet;
  readonly plan: ChangeablePlan;
  /** What the sheet's readings have shown. */
  readonly measured?: Outcome<MeasuredResult> | undefined;
  /** Of the band at the top; else as it is known best at the torque in use, else the target. */
  readonly stressAtTop?: number | undefined; // Pa
}

/** The answers by what they are about; what cannot be said yet is not there. */
export interface Answers {
  readonly results?: WorksheetResults | undefined;
  readonly prediction?: PredictionAnswer | undefined; // comes with the results
  readonly stress?: StressTrials | undefined;
  readonly plan?: PlanAnswer | undefined;
}

/** What the plan of a question reaches; without an outcome where the stress at the top is not known. */
export interface PlanAnswer {
  readonly key: string;
  readonly stressAtTop?: number | undefined; // Pa
  readonly at?: StressAtLoad | undefined; // of the load at the top; undefined where the stress is the target
  readonly outcome?: PlanOutcome | undefined;
  readonly tooHigh?: readonly TopLoadTrouble[] | undefined; // what counts most first
}

/** The interval at the top torque, and the curve, whose interval ends on it. */
export interface PredictionAnswer {
  readonly trials: PredictionTrials | undefined;
  readonly curve: readonly PredictedPoint[];
}

/** What a prediction hangs on. */
interface PredictionQuestion {
  readonly worksheet: Worksheet;
  readonly torques: readonly number[];
}

/** Works something out anew only where one of the named parts of the worksheet is another than last time. */
function partly<Value>(
  names: readonly (keyof Worksheet)[],
  compute: (worksheet: Worksheet) => Value,
): (worksheet: Worksheet) => Value {
  let last: { readonly worksheet: Worksheet; readonly value: Value } | undefined;
  return (worksheet) => {
    const isSame = last && names.every((name) => last?.worksheet[name] === worksheet[name]);
    const value = last && isSame ? last.value : compute(worksheet);
    last = { worksheet, value };
    return value;
  };
}

const chainOf = partly(['mill', 'band', 'tensioner', 'use', 'readings', 'target'], worksheetChain);
const measurementOf = partly(['band', 'tensioner', 'rig', 'readings'], worksheetMeasurement);
let last: Worksheet | undefined;

const known = <Value>(outcome: Outcome<Value>) => (outcome.ready ? outcome : undefined);

/** Hangs on the torque of the readings, not on what the dial showed: another dial reading asks nothing new. */
function predictionQuestion(
  { mill, band, tensioner, use }: Worksheet,
  results: WorksheetResults,
): PredictionQuestion | undefined {
  const { predicted, points } = results;
  if (!predicted.ready && !points.ready) return undefined;
  const load = predicted.ready ? predicted.operands.torque : loadIn({ tensioner }, use);
  const inUse = { ...emptyWorksheet.use, [loadName(tensioner)]: load };
  const worksheet = { ...emptyWorksheet, mill, band, tensioner, use: inUse };
  return { worksheet, torques: curveTorques(results) };
}

function predictionFor({ worksheet, torques }: PredictionQuestion): PredictionAnswer {
  const trials = known(trialsOfPrediction(worksheet));
  const curve = known(predictedCurve(worksheet, torques, trials));
  return { trials, curve: curve?.points ?? [] };
}

let predicted: { readonly of: PredictionQuestion; readonly answer: PredictionAnswer } | undefined;

/** The answer, worked out anew only where what it hangs on is another than last time. */
function predictionOnce(question: PredictionQuestion): PredictionAnswer {
  const of = sharing(predicted?.of, question);
  if (of !== predicted?.of) predicted = { of, answer: predictionFor(of) };
  return predicted.answer;
}

function resultsFor(worksheet: Worksheet): Answers {
  last = sharing(last, worksheet);
  const results = resultsOf(last, chainOf(last), measurementOf(last));
  const question = predictionQuestion(last, results);
  return { results, prediction: question && predictionOnce(question) };
}

const unmeasured = { ready: false, waitsFor: ['readings'] } as const;

/** What a plan's top gives and passes; where no load tells its stress, the target stands for that. */
function topOf({ worksheet, measured = unmeasured }: PlanQuestion) {
  const [chain, load] = [worksheetChain(worksheet), loadIn(worksheet, worksheet.use)];
  const at = load === undefined ? undefined : stressAtLoad({ ...chain, measured }, load);
  if (load !== undefined && at)
    return { at, tooHigh: topLoadTroubles(worksheet, chain, measured, load) };
  const { stress } = worksheet.target;
  const guard =
    stress === undefined ? undefined : beyondPractice({ stress, expandedUncertainty: 0 });
  return { at: undefined, tooHigh: guard ? [{ guard, highest: undefined }] : [] };
}

function reachedBy(question: PlanQuestion): PlanAnswer {
  const { key, worksheet, plan } = question;
  const { at, tooHigh } = topOf(question);
  const stressAtTop = question.stressAtTop ?? at?.stress ?? worksheet.target.stress;
  const { youngsModulus } = worksheet.band;
  if (stressAtTop === undefined || youngsModulus === undefined) return { key };
  const whole = { ...plan, stressAtTop, youngsModulus };
  const outcome = planOutcome(whole, planRepeats, worksheetTrials.seed);
  return { key, stressAtTop, at, outcome, tooHigh };
}

/** The answer to a question. */
export function answerTo(question: Question): Answers {
  const { about, worksheet } = question;
  if (about === 'results') return resultsFor(worksheet);
  if (about === 'stress') return { stress: known(trialsOfStress(worksheet)) };
  return { plan: reachedBy(question) };
}

/** What the sheet comes to, and the questions it answers. Loaded by the worker, or in its stead. */
import type {
  Outcome,
  PredictedPoint,
  PredictionTrials,
  StressTrials,
  WorksheetResults,
} from '../../core/worksheet.ts';
import {
  predictedCurve,
  resultsOf,
  trialsOfPrediction,
  trialsOfStress,
  type Worksheet,
  worksheetChain,
  worksheetMeasurement,
} from '../../core/worksheet.ts';
import { sharing } from './sharing.ts';

/**
 * All results; the prediction with its interval by trials, and its course over some torques; the measured stress by
 * trials. In this order of haste.
 */
export type Question =
  | { readonly about: 'results'; readonly worksheet: Worksheet }
  | {
      readonly about: 'prediction';
      readonly worksheet: Worksheet;
      readonly torques: readonly number[];
    }
  | { readonly about: 'stress'; readonly worksheet: Worksheet };

/** The answers by what they are about; what cannot be said yet is not there. */
export interface Answers {
  readonly results?: WorksheetResults | undefined;
  readonly prediction?: PredictionAnswer | undefined;
  readonly stress?: StressTrials | undefined;
}

/** The interval at the top torque, and the curve, whose interval ends on it. */
export interface PredictionAnswer {
  readonly trials: PredictionTrials | undefined;
  readonly curve: readonly PredictedPoint[];
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

function resultsFor(worksheet: Worksheet): WorksheetResults {
  last = sharing(last, worksheet);
  return resultsOf(last, chainOf(last), measurementOf(last));
}

const known = <Value>(outcome: Outcome<Value>) => (outcome.ready ? outcome : undefined);

/** The answer to a question. */
export function answerTo(question: Question): Answers {
  const { about, worksheet } = question;
  if (about === 'results') return { results: resultsFor(worksheet) };
  if (about === 'stress') return { stress: known(trialsOfStress(worksheet)) };
  const trials = known(trialsOfPrediction(worksheet));
  const curve = known(predictedCurve(worksheet, question.torques, trials));
  return { prediction: { trials, curve: curve?.points ?? [] } };
}

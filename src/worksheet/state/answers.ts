/** What takes more than a few milliseconds, and the questions it answers. Loaded by the worker, or in its stead. */
import type {
  Outcome,
  PredictedPoint,
  PredictionTrials,
  StressTrials,
} from '../../core/worksheet.ts';
import {
  predictedCurve,
  trialsOfPrediction,
  trialsOfStress,
  type Worksheet,
} from '../../core/worksheet.ts';

/** The prediction with its interval by trials, and its course over some torques; or the measured stress by trials. */
export type Question =
  | {
      readonly about: 'prediction';
      readonly worksheet: Worksheet;
      readonly torques: readonly number[];
    }
  | { readonly about: 'stress'; readonly worksheet: Worksheet };

/** The answers by what they are about; what cannot be said yet is not there. */
export interface Answers {
  readonly prediction?: PredictionAnswer | undefined;
  readonly stress?: StressTrials | undefined;
}

/** The interval at the top torque, and the curve, whose interval ends on it. */
export interface PredictionAnswer {
  readonly trials: PredictionTrials | undefined;
  readonly curve: readonly PredictedPoint[];
}

const known = <Value>(outcome: Outcome<Value>) => (outcome.ready ? outcome : undefined);

/** The answer to a question. */
export function answerTo(question: Question): Answers {
  const { worksheet } = question;
  if (question.about === 'stress') return { stress: known(trialsOfStress(worksheet)) };
  const trials = known(trialsOfPrediction(worksheet));
  const curve = known(predictedCurve(worksheet, question.torques, trials));
  return { prediction: { trials, curve: curve?.points ?? [] } };
}

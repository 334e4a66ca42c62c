/** The chart's finding in one sentence, with its number. */
import type { WorksheetResults } from '../../core/worksheet.ts';
import type { Answers } from '../state/answers.ts';
import type { Shown } from '../state/shown.ts';

/** What the chart shows at this moment; undefined while there is nothing to draw. */
export function chartFinding(
  results: WorksheetResults,
  { prediction }: Answers,
  shown: Shown,
): string | undefined {
  const { measured, agreement, points, predicted } = results;
  const range = prediction?.trials ?? predicted;
  const theory = 'low' in range && shown.range(range.low, range.high, 'stress');
  if (measured.ready) {
    const stress = shown.plusMinus(measured.stress, measured.expandedUncertainty, 'stress');
    const top = `At ${shown.quantity(measured.topTorque, shown.load.name)} the stress in the band is ${stress}`;
    if (!agreement.ready) return `${top}.`;
    const joint = agreement.verdict === 'agree' ? 'in agreement with' : 'not in agreement with';
    return `${top}, ${joint} the ${theory} that the ${shown.load.by} predicts.`;
  }
  if (predicted.ready) {
    return `The ${shown.load.by} should give ${theory} at ${shown.quantity(predicted.operands.torque, shown.load.name)}.`;
  }
  return points.ready ? 'The readings so far.' : undefined;
}

/** The chart's finding in one sentence, with its number. */
import type { WorksheetResults } from '../../core/worksheet.ts';
import type { Shown } from './shown.ts';

/** What the chart shows at this moment; undefined while there is nothing to draw. */
export function chartFinding(results: WorksheetResults, shown: Shown): string | undefined {
  const { measured, agreement, points, predicted } = results;
  if (measured.ready) {
    const stress = shown.plusMinus(measured.stress, measured.expandedUncertainty, 'stress');
    const top = `At ${shown.quantity(measured.topTorque, 'torque')} the band carries ${stress}`;
    if (!agreement.ready) return `${top}.`;
    const { predicted: expected, expandedPredicted } = agreement.operands;
    const theory = shown.plusMinus(expected, expandedPredicted, 'stress');
    const joint = agreement.verdict === 'agree' ? 'in agreement with' : 'not in agreement with';
    return `${top}, ${joint} the ${theory} expected from the screw.`;
  }
  if (predicted.ready) {
    const { stress, expandedUncertainty, operands } = predicted;
    return `The screw should give ${shown.plusMinus(stress, expandedUncertainty, 'stress')} at ${shown.quantity(operands.torque, 'torque')}.`;
  }
  return points.ready ? 'The readings so far.' : undefined;
}

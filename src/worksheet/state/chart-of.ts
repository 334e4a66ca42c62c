/** From the sheet to the chart that is to be drawn of it. */
import type { StressChart } from '../../charts/stress-chart.ts';
import type { WorksheetResults } from '../../core/worksheet.ts';
import { chartFinding } from '../words/chart-words.ts';
import type { Answers } from './answers.ts';
import type { Shown } from './shown.ts';

/** The zero and the straight line as stresses, once the stress is known. */
function lineAndZero({ measured, zero }: WorksheetResults) {
  if (!measured.ready || !zero.ready) return {};
  const perMetre = measured.stress / zero.stretch.stretch;
  const torque = measured.dragTorque;
  return {
    line: [
      { torque, stress: 0 },
      { torque: measured.topTorque, stress: measured.stress },
    ],
    zero: {
      torque,
      low: perMetre * (zero.low - zero.zero),
      high: perMetre * (zero.high - zero.zero),
    },
  };
}

/** What is to be drawn for a sheet; undefined while there is nothing. */
export function chartOf(
  results: WorksheetResults,
  answers: Answers,
  shown: Shown,
  width: number,
): StressChart | undefined {
  const title = chartFinding(results, answers, shown);
  if (title === undefined) return undefined;
  const { points, setting } = results;
  return {
    title,
    description: 'Stress over torque: prediction as a band, readings as dots with bars.',
    system: shown.system,
    width,
    points: points.ready ? points.points : [],
    curve: answers.prediction?.curve ?? [],
    ...lineAndZero(results),
    ...(setting.ready && { setting: { torque: setting.torque, stress: setting.stress } }),
  };
}

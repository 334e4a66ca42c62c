/** From the sheet to the chart that is to be drawn of it. */
import type { StressChart } from '../../charts/stress-chart.ts';
import type { Worksheet } from '../../core/worksheet.ts';
import { predictedCurve, type WorksheetResults } from '../../core/worksheet.ts';
import { chartFinding } from '../words/chart-words.ts';
import type { Shown } from './shown.ts';

const CURVE_STEPS = 24;

function torquesUpTo(top: number): readonly number[] {
  return Array.from({ length: CURVE_STEPS + 1 }, (_, i) => (top * i) / CURVE_STEPS);
}

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
  worksheet: Worksheet,
  results: WorksheetResults,
  shown: Shown,
  width: number,
): StressChart | undefined {
  const title = chartFinding(results, shown);
  if (title === undefined) return undefined;
  const { points, predicted, setting } = results;
  const measured = points.ready ? points.points : [];
  const torques = [
    ...measured.map(({ torque }) => torque),
    ...(predicted.ready ? [predicted.operands.torque] : []),
    ...(setting.ready ? [setting.torque] : []),
  ];
  const curve = predictedCurve(worksheet, torquesUpTo(1.05 * Math.max(...torques)));
  return {
    title,
    description: 'Stress over torque: prediction as a band, readings as dots with bars.',
    system: shown.system,
    width,
    points: measured,
    curve: curve.ready ? curve.points : [],
    ...lineAndZero(results),
    ...(setting.ready && { setting: { torque: setting.torque, stress: setting.stress } }),
  };
}

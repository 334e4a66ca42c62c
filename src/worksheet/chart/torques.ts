/**
 * Where the chart wants the prediction to be known.
 * Units: SI.
 */
import type { WorksheetResults } from '../../core/worksheet.ts';

const CURVE_STEPS = 24;

/** The torques, N·m, at which the prediction is to be known: evenly past the highest that is shown, and at each reading. */
export function curveTorques({ points, predicted, setting }: WorksheetResults): readonly number[] {
  const measured = points.ready ? points.points.map(({ torque }) => torque) : [];
  const shown = [
    ...measured,
    ...(predicted.ready ? [predicted.operands.torque] : []),
    ...(setting.ready ? [setting.torque] : []),
  ];
  const top = 1.05 * Math.max(0, ...shown);
  const even = Array.from({ length: CURVE_STEPS + 1 }, (_, i) => (top * i) / CURVE_STEPS);
  return [...new Set([...even, ...measured])].sort((a, b) => a - b);
}

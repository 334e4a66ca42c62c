/**
 * From the results of a sheet to what its chart shows, as plain data.
 * Units: SI.
 */
import { isApart, type PredictedPoint, type WorksheetResults } from '../../core/worksheet.ts';
import type { PlottedReading } from '../../figures/stress-plot/ReadingMarks.tsx';
import { straight, type TorquePoint } from '../../figures/stress-plot/scales.ts';

/** What the chart shows; what is not known is left out. */
export interface StressChart {
  readonly curve: readonly PredictedPoint[];
  readonly readings: readonly PlottedReading[];
  /** What all readings together say, and the line through both errors. */
  readonly lines?: {
    readonly whole: readonly TorquePoint[];
    readonly throughBothErrors?: readonly TorquePoint[] | undefined;
  };
  readonly zero?: { readonly torque: number; readonly low: number; readonly high: number };
  readonly setting?: TorquePoint;
}

/** The lines and the zero as stresses, once the stress is known. */
function linesAndZero({ measured, zero, line }: WorksheetResults) {
  if (!measured.ready || !zero.ready) return {};
  const { dragTorque: torque, topTorque, stress } = measured;
  const perMetre = stress / zero.stretch.stretch;
  const start = { torque, stress: 0 };
  return {
    lines: {
      whole: [start, { torque: topTorque, stress }],
      throughBothErrors: line.ready
        ? straight({ torque, stress: line.intercept + line.slope * torque }, line.slope, topTorque)
        : undefined,
    },
    zero: {
      torque,
      low: perMetre * (zero.low - zero.zero),
      high: perMetre * (zero.high - zero.zero),
    },
  };
}

/** The chart of some results, with the prediction over `curveTorques`; without a setting while theory and measurement do not agree. */
export function chartOf(results: WorksheetResults, curve: readonly PredictedPoint[]): StressChart {
  const { points, setting } = results;
  return {
    curve,
    readings: points.ready ? points.points : [],
    ...linesAndZero(results),
    ...(setting.ready &&
      !isApart(results) && { setting: { torque: setting.torque, stress: setting.stress } }),
  };
}

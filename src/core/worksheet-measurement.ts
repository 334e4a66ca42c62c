/**
 * The measuring side of the worksheet, composed: rows, zero, stress, and the line through the readings.
 * Units: SI only (m, Pa, N·m).
 * Source: definition.
 */
import type { Worksheet } from './worksheet-form.ts';
import type { LineResult, PointsResult } from './worksheet-line.ts';
import { worksheetLine, worksheetPoints } from './worksheet-line.ts';
import type { MeasuredResult } from './worksheet-measured.ts';
import { worksheetMeasured } from './worksheet-measured.ts';
import type { Outcome } from './worksheet-outcome.ts';
import type { RowsResult, SeriesResult } from './worksheet-readings.ts';
import { worksheetRows, worksheetSeries } from './worksheet-readings.ts';
import { worksheetStressScale } from './worksheet-stress.ts';
import type { StressInputs } from './worksheet-stress-inputs.ts';
import { worksheetStressInputs } from './worksheet-stress-inputs.ts';
import type { ZeroResult } from './worksheet-zero.ts';
import { worksheetZero } from './worksheet-zero.ts';

/** What the readings come to. */
export interface Measurement {
  readonly rows: Outcome<RowsResult>;
  readonly series: Outcome<SeriesResult>;
  readonly zero: Outcome<ZeroResult>;
  readonly inputs: Outcome<StressInputs>;
  readonly measured: Outcome<MeasuredResult>;
  readonly points: Outcome<PointsResult>;
  readonly line: Outcome<LineResult>;
}

/** Everything that follows from the readings, the rig and the steel. */
export function worksheetMeasurement(worksheet: Worksheet): Measurement {
  const rows = worksheetRows(worksheet);
  const series = worksheetSeries(worksheet, rows);
  const zero = worksheetZero(worksheet, series);
  const scale = worksheetStressScale(worksheet);
  const inputs = worksheetStressInputs(worksheet, zero, scale);
  const measured = worksheetMeasured(worksheet, zero, inputs);
  const points = worksheetPoints(zero, scale);
  return { rows, series, zero, inputs, measured, points, line: worksheetLine(points) };
}

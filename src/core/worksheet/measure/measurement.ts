/**
 * The measuring side of the worksheet, composed: rows, zero, stress, and the line through the readings.
 * Units: SI only (m, Pa, N·m).
 * Source: definition.
 */
import type { Worksheet } from '../inputs.ts';
import type { Outcome } from '../outcome.ts';
import type { DialDirection } from './dial-direction.ts';
import { dialDirection, withDirection } from './dial-direction.ts';
import type { LineResult, PointsResult } from './line.ts';
import { worksheetLine, worksheetPoints } from './line.ts';
import type { MeasuredResult } from './measured.ts';
import { worksheetMeasured } from './measured.ts';
import type { RowsResult, SeriesResult } from './readings.ts';
import { worksheetRows, worksheetSeries } from './readings.ts';
import { worksheetStressScale } from './stress.ts';
import type { StressInputs } from './stress-inputs.ts';
import { worksheetStressInputs } from './stress-inputs.ts';
import type { Verdict } from './verdict.ts';
import { widenedInputs, worksheetVerdict } from './verdict.ts';
import type { ZeroResult } from './zero.ts';
import { worksheetZero } from './zero.ts';

/** What the readings come to. */
export interface Measurement {
  readonly dialRuns: DialDirection | undefined; // undefined: neither said nor shown
  readonly rows: Outcome<RowsResult>;
  readonly series: Outcome<SeriesResult>;
  readonly zero: Outcome<ZeroResult>;
  readonly verdict: Verdict;
  readonly inputs: Outcome<StressInputs>; // widened where the verdict is rough
  readonly measured: Outcome<MeasuredResult>;
  readonly points: Outcome<PointsResult>;
  readonly line: Outcome<LineResult>;
}

/** Everything that follows from the readings, the rig and the steel. */
export function worksheetMeasurement(asFilledIn: Worksheet): Measurement {
  const rows = worksheetRows(asFilledIn);
  const dialRuns = dialDirection(asFilledIn.rig, rows);
  const worksheet = { ...asFilledIn, rig: withDirection(asFilledIn.rig, dialRuns) };
  const series = worksheetSeries(worksheet, rows);
  const zero = worksheetZero(worksheet, series);
  const scale = worksheetStressScale(worksheet);
  const narrow = worksheetStressInputs(worksheet, zero, scale);
  const verdict = worksheetVerdict(zero, narrow);
  const inputs = widenedInputs(narrow, verdict);
  const measured = worksheetMeasured(worksheet, zero, inputs);
  const points = worksheetPoints(zero, scale);
  const line = worksheetLine(points);
  return { dialRuns, rows, series, zero, verdict, inputs, measured, points, line };
}

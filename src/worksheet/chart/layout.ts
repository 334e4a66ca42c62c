/**
 * Where the worksheet's chart stands in its drawing, and how far its axes go: to round numbers in the reader's units.
 * Units: SI in the ends; drawing units otherwise.
 */
import { tickStep } from 'd3-array';
import { type Frame, type TorqueScales, torqueScales } from '../../figures/stress-plot/scales.ts';
import type { QuantityKind, UnitSystem } from '../../units/kinds.ts';
import { fromSi, toSi } from '../../units/si-value.ts';
import type { StressChart } from './of-results.ts';

/** One drawing: its place beside the boxes is on every wide screen as narrow as a phone. */
export const CHART_SIZE = { width: 360, height: 268 } as const;
const FRAME: Frame = { left: 46, right: 352, top: 26, bottom: 228 };

/** From the least to the most of `values` and nought, widened to round numbers of the unit shown. */
function roundEnds(
  values: readonly number[],
  kind: QuantityKind,
  system: UnitSystem,
): readonly [number, number] {
  const shown = [0, ...values].map((value) => fromSi(value, kind, system));
  const [least, most] = [Math.min(...shown), Math.max(...shown)];
  const step = tickStep(least, most, 10) || 1; // nought and nought have no step between them
  const from = Math.floor(least / step) * step;
  const ends = [from, Math.max(from + step, Math.ceil(most / step) * step)] as const;
  return [toSi(ends[0], kind, system), toSi(ends[1], kind, system)];
}

/** Scales that hold everything the chart shows. */
export function chartScales(
  chart: StressChart,
  system: UnitSystem,
  load: QuantityKind = 'torque',
): TorqueScales {
  const { curve, readings, lines, zero, setting } = chart;
  const points = [...curve, ...readings, ...(lines?.whole ?? []), ...(setting ? [setting] : [])];
  const stresses = [
    ...points.map(({ stress }) => stress),
    ...curve.map(({ high }) => high),
    ...(zero ? [zero.low, zero.high] : []),
  ];
  const torques = points.map(({ torque }) => torque);
  return torqueScales(
    FRAME,
    roundEnds(torques, load, system),
    roundEnds(stresses, 'stress', system),
  );
}

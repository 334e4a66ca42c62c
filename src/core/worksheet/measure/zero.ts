/**
 * Where stretching begins in the worksheet's loading series, and the stretch at its top torque.
 * Units: SI only (m, N·m).
 * Source: definition; the method is that of zero.ts.
 */
import { FEWEST_READINGS, isLongEnough } from '../../zero/torque-series.ts';
import type { SeriesZero, ZeroFromTorque, ZeroWarning } from '../../zero.ts';
import { zeroFromTorque } from '../../zero.ts';
import type { Worksheet } from '../inputs.ts';
import type { LoadReading } from '../load.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { worksheetDrag } from '../torque-at-hand.ts';
import { shiftAtShare, worksheetBarWeight } from './bar-weight.ts';
import type { SeriesResult } from './readings.ts';

/**
 * Zero by the envelope method; the arrays have one entry for each reading above the drag torque. Of
 * several series, `zero` to `high` are of the last, whose clamping may still stand.
 */
export interface ZeroResult {
  readonly zero: number; // m, on the scale of the series (0 = its first usable row)
  readonly standardUncertainty: number; // m, drag not included
  readonly low: number; // m, 95 %
  readonly high: number; // m
  readonly zeros: readonly SeriesZero[]; // of each series that has readings above the drag torque
  readonly probabilityNoToe: number;
  readonly rows: readonly number[]; // place in worksheet.readings
  readonly series: readonly number[]; // number of the series that each belongs to
  readonly torques: readonly number[]; // N·m
  readonly elongations: readonly number[]; // m since the first usable row, the bar's weight taken out
  readonly turns: readonly (number | undefined)[]; // turns of the screw
  readonly toe: readonly number[]; // m
  readonly belowDrag: readonly number[]; // rows whose torque does not exceed the drag torque
  readonly withoutTorque: readonly number[]; // rows at no torque
  readonly warnings: readonly ZeroWarning[];
  readonly dragTorque: number; // N·m
  readonly repeatability: number; // m
  readonly loadReading: LoadReading; // how well wrench or gauge are read
  readonly barShiftAtTop: number; // m added to the reading at the top torque for the bar's weight
  readonly stretch: StretchResult;
}

/** The stretch at the top torque, from all readings together. */
export interface StretchResult {
  readonly stretch: number; // m
  readonly standardUncertainty: number; // m, drag not included
  readonly low: number; // m, 95 %
  readonly high: number; // m
  readonly degreesOfFreedom: number;
  readonly topTorque: number; // N·m
}

/**
 * Zero and stretch of the series; refused where the readings are too few (`tooFewReadings`: repeats
 * at one torque count once) or do not rise with torque (`readingFalls`).
 */
export function worksheetZero(
  worksheet: Worksheet,
  seriesOutcome: Outcome<SeriesResult>,
): Outcome<ZeroResult> {
  const drag = worksheetDrag(worksheet);
  return whenReady({ series: seriesOutcome, drag }, ({ series, drag: { dragTorque } }) => {
    const { torques, elongations, repeatability, topTorque } = series;
    const once = readingsOnce(series);
    if (!isLongEnough({ ...once, dragTorque }))
      return refused('tooFewReadings', lackOf(once, dragTorque), ['readings']);
    const find = (readings: readonly number[]) =>
      zeroFromTorque({ torques, series: series.series, readings, dragTorque, repeatability });
    const weight = worksheetBarWeight(worksheet, () => find(elongations).elongation);
    return whenReady({ weight }, ({ weight: { shiftAtTop } }) => {
      const shares = torques.map((torque) => (torque - dragTorque) / (topTorque - dragTorque));
      const lifted = shares.map(
        (share, i) => (elongations[i] as number) + shiftAtShare(shiftAtTop, share),
      );
      const found = find(lifted);
      if (found.elongation <= 0)
        return refused('readingFalls', {}, ['readings', 'rig.dialRunsBackwards']);
      return ready(zeroResult({ ...series, elongations: lifted }, dragTorque, shiftAtTop, found));
    });
  });
}

/** The readings of each series, of those at one torque only one. */
function readingsOnce({ torques, series }: SeriesResult) {
  const levels = new Map(torques.map((torque, i) => [`${series[i]} ${torque}`, i]));
  const places = [...levels.values()];
  const once = places.map((i) => torques[i] as number);
  return { torques: once, readings: once, series: places.map((i) => series[i] as number) };
}

/** How many torques above the drag the longest series has; where these are enough, how many are above `low`, in the upper half. */
function lackOf(
  { torques, series }: ReturnType<typeof readingsOnce>,
  dragTorque: number,
): Readonly<Record<string, number>> {
  const lists = series.map((number) =>
    torques.filter((torque, i) => series[i] === number && torque > dragTorque),
  );
  const longest = lists.reduce((a, b) => (b.length > a.length ? b : a));
  const levels = longest.length;
  if (levels < FEWEST_READINGS) return { levels };
  const torque = Math.max(...torques);
  const low = (dragTorque + torque) / 2;
  return { levels, count: longest.filter((each) => each >= low).length, low, torque };
}

/** The zero of the series with a number. */
export function zeroOfSeries({ zeros }: ZeroResult, number: number): SeriesZero {
  return zeros.find(({ series }) => series === number) as SeriesZero;
}

function zeroResult(
  series: SeriesResult,
  dragTorque: number,
  barShiftAtTop: number,
  found: ZeroFromTorque,
): ZeroResult {
  const rowsWhere = (keep: (torque: number) => boolean) =>
    series.rows.filter((_, i) => keep(series.torques[i] as number));
  const kept = <Value>(values: readonly Value[]) => found.kept.map((i) => values[i] as Value);
  return {
    zero: found.zero,
    standardUncertainty: found.standardUncertainty,
    low: found.low,
    high: found.high,
    zeros: found.zeros,
    probabilityNoToe: found.probabilityNoToe,
    rows: kept(series.rows),
    series: kept(series.series),
    torques: kept(series.torques),
    elongations: kept(series.elongations),
    turns: kept(series.turns),
    toe: found.toe,
    belowDrag: rowsWhere((torque) => torque > 0 && torque <= dragTorque),
    withoutTorque: rowsWhere((torque) => torque === 0),
    warnings: found.warnings,
    dragTorque,
    repeatability: series.repeatability,
    loadReading: series.loadReading,
    barShiftAtTop,
    stretch: {
      stretch: found.elongation,
      standardUncertainty: found.sdElongation,
      low: found.elongationLow,
      high: found.elongationHigh,
      degreesOfFreedom: found.degreesOfFreedom,
      topTorque: series.topTorque,
    },
  };
}

/**
 * A loading series against torque, its loads written as shares of the top load.
 * Units: N·m for torques (or any load in line with the force: pressure, spring length), m for readings.
 * Source: definition; the fewest readings are those of the simulations in tests/study.
 */
import { assertAtLeast, assertList, assertPositive } from '../assert.ts';

/** Readings above the drag torque that a zero needs. */
export const FEWEST_READINGS = 6;
const FEWEST_IN_UPPER_HALF = 3;

/** A loading series; lists (n) in the order in which it was taken. */
export interface TorqueSeries {
  readonly torques: readonly number[]; // N·m
  readonly readings: readonly number[]; // m, growing with stretch
  readonly dragTorque: number; // N·m, turns the screw with no load, at least 0
  readonly series?: readonly number[]; // number of the series that each belongs to; one if not said
}

/** The readings above the drag torque: only they feel the load. */
export interface LoadedReadings {
  readonly kept: readonly number[]; // places in the series
  readonly loads: readonly number[]; // x = (M − M_d)/(M_max − M_d), above 0 to 1
  readonly readings: readonly number[]; // m
  readonly range: number; // M_max − M_d, N·m
  readonly series: readonly number[]; // of each, counted from 0 without a gap
  readonly numbers: readonly number[]; // of the series, as given
}

/** Loads as shares of the top load of all series. @throws RangeError if lists differ or hold what is not finite */
export function loadedReadings(all: TorqueSeries): LoadedReadings {
  const { torques, readings, dragTorque, series = torques.map(() => 1) } = all;
  assertAtLeast('dragTorque', dragTorque, 0, 'N·m');
  assertList('torques', torques, torques.length, 'N·m');
  assertList('readings', readings, torques.length, 'm');
  assertList('series', series, torques.length);
  const kept = [...torques.keys()].filter((i) => (torques[i] as number) > dragTorque);
  const range = Math.max(...torques) - dragTorque;
  const numbers = [...new Set(kept.map((i) => series[i] as number))];
  return {
    kept,
    loads: kept.map((i) => ((torques[i] as number) - dragTorque) / range),
    readings: kept.map((i) => readings[i] as number),
    range,
    series: kept.map((i) => numbers.indexOf(series[i] as number)),
    numbers,
  };
}

function upperHalf(loads: readonly number[]): number {
  return loads.filter((load) => load >= 0.5).length;
}

/** The loads of each series, the longest first. */
function loadsBySeries({ loads, series, numbers }: LoadedReadings): readonly number[][] {
  const lists = numbers.map((_, place) => loads.filter((_, i) => series[i] === place));
  return lists.sort((a, b) => b.length - a.length);
}

const isLong = (loads: readonly number[]): boolean =>
  loads.length >= FEWEST_READINGS &&
  upperHalf(loads) >= FEWEST_IN_UPPER_HALF &&
  Math.min(...loads) < Math.max(...loads);

/** Passes readings from which zero can be found: those of one series must be enough by themselves. @throws RangeError otherwise, with what falls short of the longest */
export function assertLongEnough(loaded: LoadedReadings): void {
  const [longest = [], ...others] = loadsBySeries(loaded);
  if (others.some(isLong)) return;
  assertAtLeast('number of readings above the drag torque', longest.length, FEWEST_READINGS);
  assertAtLeast('number of readings in the upper half', upperHalf(longest), FEWEST_IN_UPPER_HALF);
  assertPositive('spread of the loads', Math.max(...longest) - Math.min(...longest));
}

/** Whether `zeroFromTorque` can use the readings: one series has 6 above the drag torque, 3 in the upper half, not all at one torque. */
export function isLongEnough(series: TorqueSeries): boolean {
  return loadsBySeries(loadedReadings(series)).some(isLong);
}

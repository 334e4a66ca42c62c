/**
 * A loading series against torque, its loads written as shares of the top load.
 * Units: N·m for torques (or any load in line with the force: pressure, spring length), m for readings.
 * Source: definition; the fewest readings are those of the simulations in tests/study.
 */
import { assertAtLeast, assertList, assertPositive } from '../assert.ts';

const FEWEST_READINGS = 6;
const FEWEST_IN_UPPER_HALF = 3;

/** A loading series; lists (n) in the order in which it was taken. */
export interface TorqueSeries {
  readonly torques: readonly number[]; // N·m
  readonly readings: readonly number[]; // m, growing with stretch
  readonly dragTorque: number; // N·m, turns the screw with no load, at least 0
}

/** The readings above the drag torque: only they feel the load. */
export interface LoadedReadings {
  readonly kept: readonly number[]; // places in the series
  readonly loads: readonly number[]; // x = (M − M_d)/(M_max − M_d), above 0 to 1
  readonly readings: readonly number[]; // m
  readonly range: number; // M_max − M_d, N·m
}

/** Loads of a series as shares of the top load. @throws RangeError if lists differ or hold what is not finite */
export function loadedReadings({ torques, readings, dragTorque }: TorqueSeries): LoadedReadings {
  assertAtLeast('dragTorque', dragTorque, 0, 'N·m');
  assertList('torques', torques, torques.length, 'N·m');
  assertList('readings', readings, torques.length, 'm');
  const kept = [...torques.keys()].filter((i) => (torques[i] as number) > dragTorque);
  const range = Math.max(...torques) - dragTorque;
  return {
    kept,
    loads: kept.map((i) => ((torques[i] as number) - dragTorque) / range),
    readings: kept.map((i) => readings[i] as number),
    range,
  };
}

function upperHalf(loads: readonly number[]): number {
  return loads.filter((load) => load >= 0.5).length;
}

/** Passes loads from which zero can be found. @throws RangeError otherwise, with what falls short */
export function assertLongEnough(loads: readonly number[]): void {
  assertAtLeast('number of readings above the drag torque', loads.length, FEWEST_READINGS);
  assertAtLeast('number of readings in the upper half', upperHalf(loads), FEWEST_IN_UPPER_HALF);
  assertPositive('spread of the loads', Math.max(...loads) - Math.min(...loads));
}

/** Whether `zeroFromTorque` can use the series: 6 readings above the drag torque, 3 in the upper half, not all at one torque. */
export function isLongEnough(series: TorqueSeries): boolean {
  const { loads } = loadedReadings(series);
  return (
    loads.length >= FEWEST_READINGS &&
    upperHalf(loads) >= FEWEST_IN_UPPER_HALF &&
    Math.min(...loads) < 1
  );
}

/**
 * A loading series on the bench, and where each way of finding zero puts it.
 * Units: SI (m, N·m); the dial is counted from the first reading.
 * Source: core/bench and core/zero.
 */
import { benchSeries } from '../../core/bench.ts';
import { dialTravel } from '../../core/elasticity.ts';
import {
  type ZeroByUpperHalf,
  type ZeroFromTorque,
  zeroByUpperHalf,
  zeroFromTorque,
} from '../../core/zero.ts';
import { millOfSeed } from './mill.ts';
import { TORQUES } from './taking.ts';

/** A series as it is written down, with the zero that only the bench knows. */
export interface TakenSeries {
  readonly torques: readonly number[];
  readonly readings: readonly number[];
  readonly dragTorque: number;
  readonly trueZero: number;
}

/** The series of a seed. */
export function takenSeries(seed: number): TakenSeries {
  const mill = millOfSeed(seed);
  const { readings, zero } = benchSeries(mill, TORQUES);
  const [start] = readings;
  const grown = readings.map(({ dial, wholeTurns }) =>
    dialTravel({
      first: start?.dial ?? 0,
      shown: dial,
      wholeTurns,
      travelPerTurn: mill.known.dialTurn,
      runsBackwards: true,
    }),
  );
  return { torques: TORQUES, readings: grown, dragTorque: mill.hidden.dragTorque, trueZero: zero };
}

/** A series with both ways of computing its zero. */
export interface ComputedSeries {
  readonly taken: TakenSeries;
  readonly classroom: ZeroByUpperHalf;
  readonly full: ZeroFromTorque;
}

/** The series of a seed, with the zero by the classroom rule and by all readings. */
export function computedSeries(seed: number): ComputedSeries {
  const taken = takenSeries(seed);
  return { taken, classroom: zeroByUpperHalf(taken), full: zeroFromTorque(taken) };
}

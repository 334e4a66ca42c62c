/**
 * A series on the practice bench as one looks at it: where the hands of the dial are before the first torque, at each
 * torque, and after letting off.
 * Units: SI only (N·m, m); turns of the handle; positions in steps of the dial.
 * Source: definition; the readings are those of series.ts.
 */
import { assertWhole } from '../assert.ts';
import { dialTravel } from '../elasticity/dial-reading.ts';
import { type Handling, handledMill } from './handling.ts';
import type { LevelMill } from './levels.ts';
import { benchSeries } from './series.ts';

/** A series as it has been taken so far. */
export interface TakenSeries extends Handling {
  readonly attempt: number; // its number at this mill, from 0
  readonly torques: readonly number[]; // N·m, as the wrench was set, one after the other
  readonly zeroedAt?: number | undefined; // place of the look at which the dial was set; undefined: it was not
}

/** One look at the dial; the first is at the slack band. */
export interface BenchLook {
  readonly torque: number; // N·m, 0 at the slack band
  readonly turns: number; // of the handle, as read
  readonly position: number; // steps of the dial, whole turns and hand together
}

/** All looks of a series. */
export interface BenchLooks {
  readonly looks: readonly BenchLook[];
  readonly released: BenchLook; // after letting off from the last of them
  readonly zero: number; // m, true, on the scale of the stretch since the first look
  readonly slipped: boolean;
}

const SLACK = 1e-3; // N·m: no screw turns so lightly
const COUNTER = { backwards: 6, forwards: 2 }; // where the small hand begins, so that it never runs out

/** Steps in a whole turn of the dial's hand. */
export const stepsPerTurn = ({ known }: Pick<LevelMill, 'known'>): number =>
  Math.round(known.dialTurn / known.dialStep);

/** Where the hands are for a growth of the reading, in steps. */
function positions(mill: LevelMill, startStep: number, zeroed: number | undefined) {
  const perTurn = stepsPerTurn(mill);
  const { runsBackwards } = mill.told;
  const way = runsBackwards ? -1 : 1;
  const whole = perTurn * COUNTER[runsBackwards ? 'backwards' : 'forwards'];
  const start = zeroed === undefined ? whole + startStep : whole - way * zeroed;
  return (growth: number): number => start + way * growth;
}

/**
 * The looks of a series, the same for the same mill, handling and torques: a longer series begins with the shorter one.
 * @throws RangeError unless torques are above 0, attempt 0 to 999 999, and zeroedAt is one of the looks
 */
export function benchLooks(mill: LevelMill, taken: TakenSeries): BenchLooks {
  const { torques, attempt, zeroedAt } = taken;
  const handled = handledMill(mill, taken);
  const { dialStep, dialTurn } = mill.known;
  const series = benchSeries(handled, [SLACK, ...torques], attempt);
  const first = series.readings[0]?.dial as number;
  const growths = series.readings.map(({ dial: shown, wholeTurns }) => {
    const travel = { first, shown, wholeTurns, travelPerTurn: dialTurn, runsBackwards: true };
    return Math.round(dialTravel(travel) / dialStep);
  });
  if (zeroedAt !== undefined) assertWhole('zeroedAt', zeroedAt, 0, torques.length);
  const zeroed = zeroedAt === undefined ? undefined : growths[zeroedAt];
  const positionOf = positions(mill, Math.round(first / dialStep), zeroed);
  const hasTurned = (place: number) =>
    Math.max(0, ...torques.slice(0, place)) > mill.hidden.dragTorque;
  return {
    looks: series.readings.map(({ torque, turns }, place) => ({
      torque: place === 0 ? 0 : torque,
      turns: hasTurned(place) ? turns : 0,
      position: positionOf(growths[place] as number),
    })),
    released: {
      torque: 0,
      turns: 0,
      position: positionOf(Math.round(series.released / dialStep)),
    },
    zero: series.zero,
    slipped: series.slipped,
  };
}

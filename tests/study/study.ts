/**
 * How well each way of finding zero does, over simulated loading series of many kinds.
 * Units: m; coverage and shares have no unit.
 * Source: assumptions of the study, in the files beside this one.
 */
import { type RandomSource, randomSource } from '../../src/core/random.ts';
import {
  zeroByNeedle,
  zeroByRuler,
  zeroByUpperHalf,
  zeroFromTorque,
  zeroFromTurns,
} from '../../src/core/zero.ts';
import { type CellTally, cellTally, type FoundZero, type Tally, tally } from './tally.ts';
import { type TorqueCase, torqueReadings } from './torque-cases.ts';
import { type TurnsCase, turnsReadings } from './turns-cases.ts';

/** The ways of finding zero from torque that are compared. */
export const torqueWays = ['firstReading', 'needle', 'ruler', 'upperHalf', 'envelope'] as const;
/** One of them. */
export type TorqueWay = (typeof torqueWays)[number];

/** One cell with its count for each way. */
export interface TorqueCell extends TorqueCase {
  readonly ways: Readonly<Record<TorqueWay, CellTally>>;
}

function byTorque(cell: TorqueCase, random: RandomSource): Record<TorqueWay, FoundZero> {
  const readings = torqueReadings(cell, random);
  const series = { torques: cell.loads, readings, dragTorque: 0 };
  return {
    firstReading: { zero: readings[0] as number },
    needle: { zero: zeroByNeedle(readings) },
    ruler: { zero: zeroByRuler(cell.loads, readings, cell.noise, random) },
    upperHalf: zeroByUpperHalf(series),
    envelope: zeroFromTorque(series),
  };
}

/** Simulates every cell; each has its own random numbers, from the seed and its place. */
export function studyTorque(
  cells: readonly TorqueCase[],
  series: number,
  seed: number,
): readonly TorqueCell[] {
  return cells.map((cell, place) => {
    const random = randomSource(seed + place);
    const found = Array.from({ length: series }, () => byTorque(cell, random));
    const ways = Object.fromEntries(
      torqueWays.map((way) => [way, cellTally(found.map((zeros) => zeros[way]))]),
    ) as Record<TorqueWay, CellTally>;
    return { ...cell, ways };
  });
}

/** The counts of the cells that `keep` keeps, for each way. */
export function torqueTable(
  cells: readonly TorqueCell[],
  keep: (cell: TorqueCell) => boolean = () => true,
): Readonly<Record<TorqueWay, Tally>> {
  const kept = cells.filter(keep);
  return Object.fromEntries(
    torqueWays.map((way) => [way, tally(kept.map(({ ways }) => ways[way]))]),
  ) as Record<TorqueWay, Tally>;
}

/** What the turns say of a group of cells: only accepted series count for the bracket. */
export interface TurnsTable {
  readonly firstReading: Tally;
  readonly bracket: Tally | null; // null if nothing was accepted
  readonly accepted: number; // share of the series
}

function byTurns(cell: TurnsCase, series: number, random: RandomSource) {
  const found = Array.from({ length: series }, () => {
    const readings = turnsReadings(cell, random);
    return {
      first: readings[0] as number,
      bracket: zeroFromTurns({ turns: cell.turns, readings }),
    };
  });
  const accepted = found.map(({ bracket }) => bracket).filter((bracket) => bracket.accepted);
  return {
    first: cellTally(found.map(({ first }) => ({ zero: first }))),
    // A share of accepted series below 1 % is too few to count a coverage from.
    bracket: accepted.length > Math.max(1, series / 100) ? cellTally(accepted) : null,
    accepted: accepted.length / series,
  };
}

/** Simulates every cell of the turns and counts them together. */
export function studyTurns(cells: readonly TurnsCase[], series: number, seed: number): TurnsTable {
  const counted = cells.map((cell, place) => byTurns(cell, series, randomSource(seed + place)));
  const brackets = counted.flatMap(({ bracket }) => (bracket === null ? [] : [bracket]));
  return {
    firstReading: tally(counted.map(({ first }) => first)),
    bracket: brackets.length > 0 ? tally(brackets) : null,
    accepted: counted.reduce((sum, { accepted }) => sum + accepted, 0) / counted.length,
  };
}

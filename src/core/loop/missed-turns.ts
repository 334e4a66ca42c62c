/**
 * Whole turns of the dial's hand that were not counted, found because the step of one reading from
 * the last is off by just that much.
 * Units: SI only (m); loads in any unit that grows with tension.
 * Source: derived here.
 */
import { assertAtLeast, assertFinite, assertList, assertPositive, refuse } from '../assert.ts';

/** The dial's travel in one turn, and the standard deviation of a reading at one setting. */
export interface DialScale {
  readonly travelPerTurn: number; // m
  readonly repeatability: number; // m
}

/**
 * Whole turns k by which a residual is off, where it is within four repeatabilities of k turns;
 * otherwise 0.
 * @throws RangeError unless travelPerTurn and repeatability are above 0 m
 */
export function turnsOff(residual: number, { travelPerTurn, repeatability }: DialScale): number {
  assertFinite('residual', residual, 'm');
  assertPositive('travelPerTurn', travelPerTurn, 'm');
  assertPositive('repeatability', repeatability, 'm');
  const turns = Math.round(residual / travelPerTurn) + 0; // + 0: none, never minus none
  return Math.abs(residual - turns * travelPerTurn) < 4 * repeatability ? turns : 0;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const [low, high] = [(sorted.length - 1) >> 1, sorted.length >> 1];
  return ((sorted[low] as number) + (sorted[high] as number)) / 2;
}

/**
 * Turns to add to each reading (n), all 0 where none is missing: steps are compared with the median
 * slope, which one spoilt reading cannot bend, and a turn forgotten once is missing from there on.
 * In the first, crooked readings one may go unseen.
 * @throws RangeError unless there are 4 readings or more, as many loads, and loads rise
 */
export function missedTurns(
  loads: readonly number[],
  extensions: readonly number[],
  scale: DialScale,
): number[] {
  assertAtLeast('number of readings', extensions.length, 4);
  assertList('extensions', extensions, extensions.length, 'm');
  assertList('loads', loads, extensions.length);
  const rises = steps(loads);
  for (const rise of rises) if (rise <= 0) refuse('each load', 'above the last', '', rise);
  const travels = steps(extensions);
  const slope = median(travels.map((travel, i) => travel / (rises[i] as number)));
  let missing = 0;
  const found = travels.map((travel, i) => {
    missing -= turnsOff(travel - slope * (rises[i] as number), scale);
    return missing;
  });
  // Turns to take off for good mean one that was missed in the crooked start: offer nothing.
  return missing < 0 ? extensions.map(() => 0) : [0, ...found];
}

function steps(values: readonly number[]): number[] {
  return values.slice(1).map((value, i) => value - (values[i] as number));
}

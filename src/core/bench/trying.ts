/**
 * What can be tried at the bench beside the dial: the handle on a slack band.
 * Units: SI only (N·m).
 * Source: how well a wrench repeats, common practice, no source.
 */
import { assertPositive, assertWhole } from '../assert.ts';
import { randomSource } from '../random.ts';
import type { LevelMill } from './levels.ts';

const TRY_SEEDS = 2 ** 52 + 2 ** 34; // beyond those of every series and level
const TRIES = 500_000; // of each kind at a mill

/**
 * The chances of the try of that number at a mill, or of the pluck: each kind has its own.
 * @throws RangeError unless the number is 0 to 499 999
 */
export function chancesOf({ seed }: LevelMill, name: 'attempt' | 'pluck', number: number) {
  assertWhole(name, number, 0, TRIES - 1);
  const from = name === 'pluck' ? TRIES : 0;
  return randomSource(TRY_SEEDS + 2 * TRIES * seed + from + number);
}

/**
 * Whether a torque turns the handle while the band is slack.
 * @throws RangeError unless torque is above 0 N·m and the number of the try 0 to 499 999
 */
export function turnsSlack(mill: LevelMill, torque: number, attempt: number): boolean {
  assertPositive('torque', torque, 'N·m');
  const { normal } = chancesOf(mill, 'attempt', attempt);
  return torque * (1 + mill.hidden.torqueScatter * normal()) > mill.hidden.dragTorque;
}

/**
 * Where stretching begins, from turns of the screw instead of torques: a bracket, where the series shows one at all.
 * Units: readings in m, growing with stretch; turns in turns.
 * Source: derived here and tested by simulation (tests/study).
 */
import { assertAtLeast, assertList, assertPositive } from '../assert.ts';
import { dialRepeatability } from '../assumptions.ts';
import { turnsBracket } from './turns-bracket.ts';

const FEWEST_BEFORE = 2; // readings before the straight part that show where it begins
const SURELY_BENT = 0.05; // highest probability of "straight throughout" that shows a start

/** A loading series against turns; lists (n) in the order in which they were taken. */
export interface TurnsSeries {
  readonly turns: readonly number[]; // turns of the screw, rising from reading to reading
  readonly readings: readonly number[]; // m, growing with stretch
  readonly repeatability?: number; // m, > 0
  readonly turnResolution?: number; // turns, step to which they are read, at least 0
}

/** Zero from turns: a bracket that holds it, if the series shows one at all. */
export interface ZeroFromTurns {
  readonly accepted: boolean; // false: turns alone cannot show the zero in this series
  readonly zero: number; // m, the middle of the bracket
  readonly standardUncertainty: number; // m, for equal chances all over the bracket
  readonly low: number; // m
  readonly high: number; // m
  readonly warnings: readonly ('doesNotRise' | 'startNotSeen')[];
}

/**
 * Zero from turns as a bracket, from the straight part carried back to the first reading up to the
 * straight part at the reading after its start, each 2 standard deviations wider.
 * @throws RangeError with fewer than 4 readings, or turns that do not rise
 */
export function zeroFromTurns(series: TurnsSeries): ZeroFromTurns {
  const { turns, readings, repeatability = dialRepeatability, turnResolution = 0 } = series;
  const count = turns.length;
  assertAtLeast('number of readings', count, 4);
  assertList('turns', turns, count);
  assertList('readings', readings, count, 'm');
  assertPositive('repeatability', repeatability, 'm');
  assertAtLeast('turnResolution', turnResolution, 0);
  for (const [i, turn] of turns.entries()) {
    if (i > 0) assertPositive(`step to turns[${i}]`, turn - (turns[i - 1] as number));
  }
  const bracket = turnsBracket({ turns, readings, repeatability, turnResolution });
  const { low, high, probabilityAll } = bracket;
  const found: ZeroFromTurns['warnings'][number][] = [];
  if (bracket.slope <= 0) found.push('doesNotRise');
  if (probabilityAll >= SURELY_BENT || bracket.start < FEWEST_BEFORE) found.push('startNotSeen');
  return {
    accepted: found.length === 0,
    zero: (low + high) / 2,
    standardUncertainty: (high - low) / Math.sqrt(12),
    low,
    high,
    warnings: found,
  };
}

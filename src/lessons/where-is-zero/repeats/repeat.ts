/**
 * One series on the bench, with the zero that each way finds in it. It comes only when the reader asks for repeats: all
 * that it takes is heavier than the page.
 * Units: m, N·m.
 * Source: core/bench, core/zero.
 */
import { dialRepeatability } from '../../../core/assumptions.ts';
import { type RandomSource, randomSource } from '../../../core/random.ts';
import { zeroByNeedle, zeroByRuler, zeroByUpperHalf, zeroFromTorque } from '../../../core/zero.ts';
import { type TakenSeries, takenSeries } from '../series.ts';
import { seedOfRepeat } from '../taking.ts';
import type { Repeat } from './tally.ts';

/** What each way finds in readings that scatter by a noise, m; a hand with a ruler is not steady, and so takes chances. */
export function zerosIn(
  { torques, readings, dragTorque }: Omit<TakenSeries, 'trueZero'>,
  hand: RandomSource,
  noise = dialRepeatability,
): Repeat['found'] {
  const series = { torques, readings, dragTorque };
  const range = Math.max(...torques) - dragTorque;
  const loads = torques.map((torque) => (torque - dragTorque) / range);
  return {
    needle: { zero: zeroByNeedle(readings) },
    ruler: { zero: zeroByRuler(loads, readings, noise, hand) },
    classroom: zeroByUpperHalf(series),
    full: zeroFromTorque(series),
  };
}

/** The repeat at a place, counted from 0: always the same one. */
export function repeatAt(place: number): Repeat {
  const seed = seedOfRepeat(place);
  const { trueZero, ...series } = takenSeries(seed);
  return { trueZero, found: zerosIn(series, randomSource(seed)) };
}

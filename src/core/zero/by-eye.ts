/**
 * Two ways of finding zero by eye, as a person might.
 * Units: m; loads as shares of the top load.
 * Source: assumptions of the study of coverage (tests/study), written down so that they can be argued with.
 */

import { fitLine } from '../line.ts';
import type { RandomSource } from '../random.ts';
import { mean } from '../summary.ts';

const STEADY = 0.25; // of the upper half's step: the needle seems to move steadily
const LOOKS_STRAIGHT = 16e-6; // m off the ruler's edge
const LOOKS_STRAIGHT_IN_NOISE = 2.5;
const DRAWN_BY_HAND = 8e-6; // m, standard deviation of a line drawn by hand, where it is read off

/** The first reading whose next two steps are like those of the upper half. */
export function zeroByNeedle(readings: readonly number[]): number {
  const steps = readings.slice(1).map((reading, i) => reading - (readings[i] as number));
  const upper = mean(steps.slice(Math.floor(steps.length / 2)));
  const start = steps.findIndex((step, i) => {
    const two = mean([step, steps[i + 1] ?? step]);
    return Math.abs(two - upper) <= STEADY * Math.abs(upper);
  });
  return readings[Math.max(0, start)] as number;
}

/** A ruler along all readings, from the last one down, that look straight; the line is drawn and read off at no load. */
export function zeroByRuler(
  loads: readonly number[],
  readings: readonly number[],
  noise: number,
  { normal }: Pick<RandomSource, 'normal'>,
): number {
  const tolerance = Math.max(LOOKS_STRAIGHT, LOOKS_STRAIGHT_IN_NOISE * noise);
  let drawn = fitLine(loads.slice(-3), readings.slice(-3));
  for (let count = 4; count <= loads.length; count += 1) {
    const [x, y] = [loads.slice(-count), readings.slice(-count)];
    const line = fitLine(x, y);
    const off = y.map((reading, i) => reading - line.intercept - line.slope * (x[i] as number));
    if (Math.max(...off.map(Math.abs)) > tolerance) break;
    drawn = line;
  }
  return drawn.intercept + DRAWN_BY_HAND * normal();
}

/**
 * Where the straight part of readings against turns begins, as a bracket: turns show frame and
 * slack as readily as tension, so the knee of the graph is not the zero, only near it.
 * Units: m for readings, turns for turns.
 * Source: derived here (evidence of a change from anything to a straight line), tested by simulation.
 */

import { logGamma } from '../statistics/special.ts';
import { mean, sum } from '../summary.ts';

const PRIOR_DEGREES_OF_FREEDOM = 2; // worth of the repeatability, against that of the residuals
const FREE_RANGE = 200e-6; // m, range over which a reading before the straight part may lie
const FEWEST_STRAIGHT = 4; // readings in the straight part

/** A loading series against turns, checked: turns rise from reading to reading, at least 4 of them. */
export interface CheckedTurns {
  readonly turns: readonly number[];
  readonly readings: readonly number[]; // m
  readonly repeatability: number; // m
  readonly turnResolution: number; // turns, step to which they are read
}

/** The bracket, and how surely a start of the straight part shows in the series. */
export interface TurnsBracket {
  readonly low: number; // m
  readonly high: number; // m
  readonly start: number; // place of the first reading of the straight part
  readonly slope: number; // m per turn of the straight part
  readonly probabilityAll: number; // that the whole series is straight, so that no start shows
}

/** Repeatability with what a turn read to the nearest step adds, by the slope of the later half. */
function blurred({ turns, readings, repeatability, turnResolution }: CheckedTurns): number {
  const [middle, last] = [Math.floor(turns.length / 2), turns.length - 1];
  const rise = (readings[last] as number) - (readings[middle] as number);
  const perTurn = rise / ((turns[last] as number) - (turns[middle] as number));
  return Math.hypot(repeatability, (perTurn * turnResolution) / Math.sqrt(12));
}

function straightFrom(
  start: number,
  turns: readonly number[],
  readings: readonly number[],
  repeatability: number,
) {
  const x = turns.slice(start);
  const y = readings.slice(start);
  const [meanX, meanY] = [mean(x), mean(y)];
  const squares = sum(x.map((value) => (value - meanX) ** 2));
  const slope = sum(x.map((value, i) => (value - meanX) * ((y[i] as number) - meanY))) / squares;
  const residuals = x.map((value, i) => (y[i] as number) - meanY - slope * (value - meanX));
  const degreesOfFreedom = PRIOR_DEGREES_OF_FREEDOM + x.length - 2;
  const total =
    PRIOR_DEGREES_OF_FREEDOM * repeatability ** 2 + sum(residuals.map((residual) => residual ** 2));
  const evidence =
    -Math.log(x.length * squares) / 2 -
    (degreesOfFreedom / 2) * Math.log(total) +
    logGamma(degreesOfFreedom / 2) -
    ((x.length - 2) / 2) * Math.log(Math.PI) -
    start * Math.log(FREE_RANGE);
  const spread = Math.sqrt(total / degreesOfFreedom);
  return { start, intercept: meanY - slope * meanX, slope, spread, evidence };
}

/**
 * From the most probable straight part carried back to the first reading, up to the same at the
 * reading after its start, each 2 standard deviations wider.
 */
export function turnsBracket(series: CheckedTurns): TurnsBracket {
  const { turns, readings } = series;
  const repeatability = blurred(series);
  const candidates = Array.from({ length: turns.length - FEWEST_STRAIGHT + 1 }, (_, start) =>
    straightFrom(start, turns, readings, repeatability),
  );
  const best = candidates.reduce((a, b) => (b.evidence > a.evidence ? b : a));
  const chances = candidates.map(({ evidence }) => Math.exp(evidence - best.evidence));
  const { start, intercept, slope, spread } = best;
  const after = turns[start + 1] as number;
  return {
    low: intercept + slope * (turns[0] as number) - 2 * spread,
    high: intercept + slope * after + 2 * spread,
    start,
    slope,
    probabilityAll: (chances[0] as number) / sum(chances),
  };
}

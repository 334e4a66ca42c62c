/**
 * The readings of each series to choose from, and which of them still straighten by more than a reading repeats.
 * Units: m, on the dial's scale from the first reading; to a nanometre.
 * Source: core/bench and core/zero.
 */
import { dialRepeatability } from '../../../core/assumptions.ts';
import { computedSeries } from '../series.ts';
import { SERIES, seedOfSeries } from '../taking.ts';

const NANOMETRES = 9;

function plotted(seed: number) {
  const { taken, full } = computedSeries(seed);
  return taken.readings.map((reading, place) => {
    const toe = full.toe[full.kept.indexOf(place)] ?? 0;
    return {
      reading: Number(reading.toFixed(NANOMETRES)),
      toe: Number(toe.toFixed(NANOMETRES)),
      inToe: Math.abs(toe) > dialRepeatability,
    };
  });
}

/** The readings of each series, in the order of their numbers. */
export const readings = Array.from({ length: SERIES }, (_, place) =>
  plotted(seedOfSeries(place + 1)),
);

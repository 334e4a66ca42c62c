/**
 * Where each way puts the zero of each series to choose from, and how far the band stretches.
 * Units: m, on the dial's scale from the first reading; to a nanometre.
 * Source: core/zero.
 */
import { coverage } from '../../../core/assumptions.ts';
import { tQuantile } from '../../../core/student.ts';
import { computedSeries } from '../series.ts';
import { SERIES, seedOfSeries } from '../taking.ts';

const NANOMETRES = 9;

function foundIn(seed: number) {
  const { taken, classroom, full } = computedSeries(seed);
  const found = {
    topReading: taken.readings.at(-1) ?? 0,
    trueZero: taken.trueZero,
    classroomZero: classroom.zero,
    classroomLow: classroom.low,
    classroomHigh: classroom.high,
    classroomStretch: classroom.elongation,
    classroomStretchReach:
      tQuantile((1 + coverage.probability) / 2, classroom.degreesOfFreedom) *
      classroom.sdElongation,
    fullZero: full.zero,
    fullLow: full.low,
    fullHigh: full.high,
    fullStretch: full.elongation,
    fullStretchLow: full.elongationLow,
    fullStretchHigh: full.elongationHigh,
  };
  const entries = Object.entries(found).map(([name, value]) => [
    name,
    Number(value.toFixed(NANOMETRES)),
  ]);
  return Object.fromEntries(entries) as typeof found;
}

/** One list for all series, in the order of their numbers. */
export const found = Array.from({ length: SERIES }, (_, place) => foundIn(seedOfSeries(place + 1)));

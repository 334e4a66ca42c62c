/**
 * The readings of the series that the reader has chosen, with whether the line at hand goes through them.
 * Units: SI.
 * Source: readings.worked.ts beside it.
 */
import type { State } from '../state.ts';
import { placeOfSeries, TORQUES } from '../taking.ts';
import { readings } from './readings.worked.ts';

/** One reading of the plot. */
export interface PlottedReading {
  readonly torque: number; // N·m
  readonly reading: number; // m, from the first
  readonly toe: number; // m, what straightening still adds to it, by all readings together
  readonly isUsed: boolean; // by the line that is shown
}

const FIRST_UPPER = Math.floor(TORQUES.length / 2);

/** The readings; a ruler may use them all. */
export function readingsOf({ values }: Pick<State, 'values'>): readonly PlottedReading[] {
  const { series, way } = values;
  const chosen = readings[placeOfSeries(series)] as (typeof readings)[number];
  return chosen.map(({ reading, toe, inToe }, place) => ({
    torque: TORQUES[place] as number,
    reading,
    toe,
    isUsed: way === 'eye' || (way === 'full' ? !inToe : place >= FIRST_UPPER),
  }));
}

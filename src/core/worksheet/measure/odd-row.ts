/**
 * Whether one row of the worksheet stands apart from the rows beside it: a digit that was slipped, a reading in haste.
 * Units: SI only (m, N·m).
 * Source: derived here: each row against the least-squares line of the four rows of its series nearest to it in torque.
 */
import { fitLine } from '../../line.ts';
import { mean, sum } from '../../summary.ts';
import { readLoadDoubt } from '../load.ts';
import type { SeriesResult } from './readings.ts';

/** A row that stands apart. */
export interface OddRow {
  readonly row: number; // place in worksheet.readings
  readonly off: number; // m, what it reads beyond the line of its neighbours; below 0 short of it
}

interface Place {
  readonly row: number;
  readonly series: number;
  readonly torque: number;
  readonly elongation: number;
}

/** What chance does to dial and load. */
type Judged = Pick<SeriesResult, 'repeatability' | 'loadReading'>;

const neighbours = 4;
const leastShare = 1 / 3; // of the top torque: below it the band may still be straightening
const most = 5; // standard deviations

/** The places of its series nearest to one in torque, nearest first: picked in one pass, for a sheet may have hundreds. */
function nearest(place: Place, places: readonly Place[]): readonly Place[] {
  const distance = (other: Place) => Math.abs(other.torque - place.torque);
  const near: Place[] = [];
  for (const other of places) {
    if (other === place || other.series !== place.series) continue;
    const before = near.findIndex((one) => distance(other) < distance(one));
    if (before >= 0) near.splice(before, 0, other);
    else if (near.length < neighbours) near.push(other);
    near.length = Math.min(near.length, neighbours);
  }
  return near;
}

/** How far a place lies off its neighbours' line, m, and in standard deviations of what chance does. */
function standing(place: Place, places: readonly Place[], readings: Judged) {
  const near = nearest(place, places);
  const torques = near.map(({ torque }) => torque);
  if (near.length < neighbours || new Set(torques).size < 2) return { off: 0, score: 0 };
  const { intercept, slope } = fitLine(
    torques,
    near.map(({ elongation }) => elongation),
  );
  const middle = mean(torques);
  const reach = (place.torque - middle) ** 2 / sum(torques.map((torque) => (torque - middle) ** 2));
  const chance = Math.hypot(
    readings.repeatability,
    slope * readLoadDoubt(readings.loadReading, place.torque),
  );
  const off = place.elongation - intercept - slope * place.torque;
  return { off, score: Math.abs(off) / (chance * Math.sqrt(1 + 1 / near.length + reach)) };
}

/** The place that stands apart the most, with how far and how much. */
function oddest(places: readonly Place[], readings: Judged) {
  return places
    .map((place) => ({ place, ...standing(place, places, readings) }))
    .reduce((a, b) => (b.score > a.score ? b : a));
}

/**
 * The one row that stands apart, if there is one and without it no other does: several together are a bend or a slipped
 * clamp, which the zero's own warnings tell. Rows up to a third of the top torque are not judged, nor judged by.
 */
export function oddRow(readings: SeriesResult): OddRow | undefined {
  const { rows, series, torques, elongations, topTorque } = readings;
  const places = rows
    .map((row, i) => ({
      row,
      series: series[i] as number,
      torque: torques[i] as number,
      elongation: elongations[i] as number,
    }))
    .filter(({ torque }) => torque > leastShare * topTorque);
  if (places.length === 0) return undefined; // nothing but rows at no torque
  const worst = oddest(places, readings);
  if (worst.score <= most) return undefined;
  const rest = places.filter((place) => place !== worst.place);
  if (oddest(rest, readings).score > most) return undefined;
  return { row: worst.place.row, off: worst.off };
}

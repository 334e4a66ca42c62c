/**
 * Which series the tones of a sound belong to: every loud peak is tried under every number, the series grows from there,
 * and the one that explains most wins. Peaks that it leaves out and tones that it lacks count against it.
 * Units: Hz; levels in decibels.
 * Source: our own rule, tried on synthesised plucks.
 */
import { NOTE_RANGE } from '../note-range.ts';
import { PHONE_HEARS_FROM } from '../phone.ts';
import type { Peak } from './peaks.ts';
import { believed, fitted, type Series, type Sharpening, type Tone, toneOf } from './series.ts';

/** A series that was found, and the peaks that make it up. */
export interface Comb extends Series {
  readonly tones: readonly Tone[];
  readonly score: number;
}

const MOST_NUMBERS = 12;
const FIRST_NUMBERS = 8; // that a loud peak is tried under
const LOUD_PEAKS = 6;
const WITHIN = 0.012; // of a tone's frequency, and
const WITHIN_BASE = 0.12; // of the base at most
const RANGE = 42; // dB from the loudest peak to one that no longer counts
const LACKING = 0.35; // what a tone that should be there costs

const weightsOf = (peaks: readonly Peak[]) => {
  const loudest = Math.max(...peaks.map(({ level }) => level));
  return new Map(peaks.map((peak) => [peak, Math.max(0.05, 1 - (loudest - peak.level) / RANGE)]));
};

function nearest(peaks: readonly Peak[], frequency: number, within: number): Peak | undefined {
  return peaks
    .filter((peak) => Math.abs(peak.frequency - frequency) <= within)
    .sort((a, b) => b.level - a.level)[0];
}

/** The series grown tone by tone from a base. */
function grown(peaks: readonly Peak[], start: number, sharpening: Sharpening) {
  let series: Pick<Series, 'base' | 'bend'> = believed(start, sharpening);
  const tones: Tone[] = [];
  for (let number = 1; number <= MOST_NUMBERS; number += 1) {
    const frequency = toneOf(series, number);
    const within = Math.min(WITHIN * frequency, WITHIN_BASE * series.base);
    const peak = nearest(peaks, frequency, within);
    if (!peak) continue;
    tones.push({ ...peak, number });
    series = fitted(tones, sharpening, start);
  }
  return tones;
}

function scored(peaks: readonly Peak[], tones: readonly Tone[], series: Series): number {
  const weights = weightsOf(peaks);
  const taken = new Set(tones.map(({ frequency }) => frequency));
  const sum = [...weights].reduce(
    (total, [peak, weight]) => total + (taken.has(peak.frequency) ? weight : -weight),
    0,
  );
  const last = tones.at(-1)?.number ?? 0;
  const numbers = new Set(tones.map(({ number }) => number));
  const lacking = Array.from({ length: last }, (_, place) => place + 1).filter(
    (number) => !numbers.has(number) && toneOf(series, number) > PHONE_HEARS_FROM,
  );
  return sum - LACKING * lacking.length;
}

function combFrom(peaks: readonly Peak[], start: number, sharpening: Sharpening): Comb | undefined {
  const tones = grown(peaks, start, sharpening);
  if (tones.length === 0) return undefined;
  const series = fitted(tones, sharpening, start);
  return { ...series, tones, score: scored(peaks, tones, series) };
}

/** The base under which a peak has a number, with what stiffness adds. */
function baseUnder(frequency: number, number: number, sharpening: Sharpening): number {
  const string = frequency / number;
  return string / 2 + Math.sqrt(Math.max(0, string ** 2 / 4 - sharpening * number ** 2));
}

/** The series that explains the peaks best; undefined where there is none in the range of a band. */
export function bestComb(peaks: readonly Peak[], sharpening: Sharpening): Comb | undefined {
  const loud = [...peaks].sort((a, b) => b.level - a.level).slice(0, LOUD_PEAKS);
  const starts = loud.flatMap(({ frequency }) =>
    Array.from({ length: FIRST_NUMBERS }, (_, place) =>
      baseUnder(frequency, place + 1, sharpening),
    ),
  );
  return starts
    .filter((start) => start > 0)
    .flatMap((start) => combFrom(peaks, start, sharpening) ?? [])
    .filter(({ fundamental }) => fundamental >= NOTE_RANGE.low && fundamental <= NOTE_RANGE.high)
    .sort((a, b) => b.score - a.score)[0];
}

/**
 * The tones in a spectrum: its peaks that stand clear of the noise, each with how well its frequency is known.
 * Units: Hz; levels in decibels.
 * Source: peak by a parabola through three levels, and the spread of a tone's frequency in noise (Cramér and Rao): from
 * memory; the allowance for the window and for dying away is our choice, tried on synthesised plucks.
 */
import type { Spectrum } from './spectrum.ts';

/** One tone. */
export interface Peak {
  readonly frequency: number;
  readonly level: number; // dB
  readonly spread: number; // Hz, standard uncertainty of its frequency
}

const LOWEST = 18; // Hz
const HIGHEST = 1200; // Hz
const CLEAR_OF_NOISE = 13; // dB, more than noise alone reaches over all frequencies
const BELOW_LOUDEST = 42; // dB: beyond lie the skirts of the loudest peak
const LOBES = 3.2; // reciprocals of the sound's length in which a peak has no louder neighbour
const NOISE_WIDTH = 40; // Hz over which noise is taken as even
const SPREAD = 0.7; // of the reciprocal length, at a level as the noise
const STEADINESS = 3e-4; // of the frequency: how far a plucked tone is no pure tone

/** Median levels of stretches of the spectrum: the noise, which single tones hardly move. */
function noiseOf({ levels, step }: Spectrum): (frequency: number) => number {
  const width = Math.max(8, Math.round(NOISE_WIDTH / step));
  const medians = Array.from({ length: Math.ceil(levels.length / width) }, (_, place) => {
    const sorted = levels.slice(place * width, (place + 1) * width).sort();
    return sorted[Math.floor(sorted.length / 2)] as number;
  });
  return (frequency) =>
    medians[Math.min(medians.length - 1, Math.floor(frequency / step / width))] as number;
}

/** Where between its neighbours a peak is highest, as a share of a step, and how high. */
function refined(levels: Float64Array, place: number) {
  const [before, at, after] = [place - 1, place, place + 1].map(
    (each) => levels[each] as number,
  ) as [number, number, number];
  const offset = (before - after) / (2 * (before - 2 * at + after));
  return { offset, level: at - ((before - after) * offset) / 4 };
}

/** All tones between 18 and 1200 Hz that stand clear, the lowest first. */
export function peaksOf(spectrum: Spectrum): readonly Peak[] {
  const { levels, step, seconds } = spectrum;
  const noise = noiseOf(spectrum);
  const reach = Math.ceil(LOBES / seconds / step);
  const [from, to] = [Math.ceil(LOWEST / step), Math.min(levels.length - 2, HIGHEST / step)];
  const least = Math.max(...levels.subarray(from, to)) - BELOW_LOUDEST;
  const peaks: Peak[] = [];
  for (let place = from; place < to; place += 1) {
    const at = levels[place] as number;
    const above = at - noise(place * step);
    if (above < CLEAR_OF_NOISE || at < least) continue;
    if (levels.subarray(Math.max(0, place - reach), place + reach + 1).some((other) => other > at))
      continue;
    const { offset, level } = refined(levels, place);
    const frequency = (place + offset) * step;
    const spread = Math.hypot(SPREAD / seconds / 10 ** (above / 20), STEADINESS * frequency);
    peaks.push({ frequency, level, spread });
  }
  return peaks;
}

/** Where a spectrum is loudest near a frequency. */
export function frequencyNear(
  { levels, step }: Spectrum,
  frequency: number,
  within: number,
): number {
  const [from, to] = [frequency - within, frequency + within].map((each) =>
    Math.round(each / step),
  ) as [number, number];
  const near = levels.subarray(Math.max(1, from), Math.min(levels.length - 1, to + 1));
  const place = Math.max(1, from) + near.indexOf(Math.max(...near));
  return (place + refined(levels, place).offset) * step;
}

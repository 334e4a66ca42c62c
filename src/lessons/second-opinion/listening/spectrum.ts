/**
 * The spectrum of a sound: how loud each frequency in it is.
 * Units: Hz, s; levels in decibels below a sine of full scale.
 * Source: the discrete Fourier transform by the package `fourier-transform`; Hann's window: definition.
 */
import magnitudes from 'fourier-transform';
import { inDecibels, type Sound } from './sound.ts';

/** Levels at equal steps of frequency from 0 on. */
export interface Spectrum {
  readonly levels: Float64Array; // dB
  readonly step: number; // Hz
  readonly seconds: number; // of the sound that it comes from
}

/** Up to where the spectrum is looked at. */
export const HIGHEST = 1300; // Hz

/** As many places as the transform takes, a power of two. */
const roomFor = (length: number): number => 2 ** Math.ceil(Math.log2(Math.max(2, length)));

/** The sound without its mean, faded in and out, with nothing behind it. */
function windowed(samples: Float32Array): Float64Array {
  const { length } = samples;
  const mean = samples.reduce((sum, sample) => sum + sample, 0) / Math.max(1, length);
  const room = new Float64Array(roomFor(length));
  samples.forEach((sample, place) => {
    room[place] = (sample - mean) * (0.5 - 0.5 * Math.cos((2 * Math.PI * place) / length));
  });
  return room;
}

/** The spectrum of a whole sound up to `highest`. */
export function spectrumOf({ samples, rate }: Sound, highest: number): Spectrum {
  const room = windowed(samples);
  const step = rate / room.length;
  const toAmplitude = (2 * room.length) / samples.length; // the window takes half
  const levels = magnitudes(room)
    .slice(0, Math.min(room.length / 2, Math.ceil(highest / step) + 2))
    .map((magnitude) => inDecibels(magnitude * toAmplitude));
  return { levels, step, seconds: samples.length / rate };
}

/** The loudest level within a span of frequencies. */
export function loudestIn({ levels, step }: Spectrum, from: number, to: number): number {
  return levels
    .subarray(Math.max(0, Math.floor(from / step)), Math.ceil(to / step) + 1)
    .reduce((most, level) => Math.max(most, level), Number.NEGATIVE_INFINITY);
}

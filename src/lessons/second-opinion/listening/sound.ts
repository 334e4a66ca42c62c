/**
 * Sound as the listening takes it: samples of one channel, and how loud parts of it are.
 * Units: full scale of the microphone is 1; Hz, s; levels in decibels below a sine of full scale.
 * Source: definition.
 */

/** One channel of sound. */
export interface Sound {
  readonly samples: Float32Array;
  readonly rate: number; // samples a second
}

/** Effective value of some samples, 1/√2 for a sine of full scale. */
export function effectiveValue(samples: Float32Array): number {
  const squares = samples.reduce((sum, sample) => sum + sample * sample, 0);
  return Math.sqrt(squares / Math.max(1, samples.length));
}

/** An amplitude in decibels; silence is far below every other level. */
export const inDecibels = (amplitude: number): number => 20 * Math.log10(Math.max(amplitude, 1e-9));

/** A part of a sound, from a time on and so long. */
export function partOf({ samples, rate }: Sound, from: number, seconds: number): Sound {
  const start = Math.max(0, Math.round(from * rate));
  return { samples: samples.subarray(start, start + Math.round(seconds * rate)), rate };
}

/** Levels of equal frames, one after the other; what is left over at the end is left out. */
export function frameLevels({ samples, rate }: Sound, frame: number): readonly number[] {
  const length = Math.round(frame * rate);
  return Array.from({ length: Math.floor(samples.length / length) }, (_, place) =>
    inDecibels(effectiveValue(samples.subarray(place * length, (place + 1) * length))),
  );
}

/** The mean of some values, 0 of none. */
export const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

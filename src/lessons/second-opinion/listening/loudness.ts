/**
 * How the loudness of a sound goes: cut off, steady, or rising at a pluck.
 * Units: s; levels in decibels; samples as a share of full scale.
 * Source: our own rules, tried on synthesised sounds.
 */
import { frameLevels, mean, type Sound } from './sound.ts';

const FRAME = 0.05; // s
const SHORTEST = 0.7; // s that must come after an onset
const FULL = 0.985; // of full scale
const CLIPPED = 6; // samples at full scale, one after the other
const STEADY = 1.2; // dB between frames

/** Whether the sound was too loud for the microphone: its tops are cut flat. */
export function isClipped(samples: Float32Array): boolean {
  let flat = 0;
  return samples.some((sample) => {
    flat = Math.abs(sample) >= FULL ? flat + 1 : 0;
    return flat >= CLIPPED;
  });
}

/** Whether a sound neither swells nor dies away. */
export function isSteady(sound: Sound): boolean {
  const levels = frameLevels(sound, FRAME);
  const middle = mean(levels);
  return Math.sqrt(mean(levels.map((level) => (level - middle) ** 2))) < STEADY;
}

/** When the sound rises most, in seconds, so that enough of it comes after. */
export function onsetOf(sound: Sound): number {
  const levels = frameLevels(sound, FRAME);
  const last = levels.length - Math.ceil(SHORTEST / FRAME);
  const rises = levels.slice(0, Math.max(1, last)).map((level, place) => {
    const before = levels.slice(Math.max(0, place - 3), place);
    return place === 0 ? 0 : level - mean(before) + level / 2;
  });
  rises[0] = (levels[0] ?? 0) / 2;
  return rises.indexOf(Math.max(...rises)) * FRAME;
}

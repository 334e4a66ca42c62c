/**
 * What a sound is: a plucked band with its note, or something that must not be taken for one.
 * Units: Hz, s; levels in decibels.
 * Source: our own rules, tried on synthesised plucks, hum, talk and machines.
 */
import { bestComb, type Comb } from './comb.ts';
import { frequencyNear, type Peak, peaksOf } from './peaks.ts';
import type { Sharpening } from './series.ts';
import { effectiveValue, frameLevels, partOf, type Sound } from './sound.ts';
import { loudestIn, type Spectrum, spectrumOf } from './spectrum.ts';

/** What is no note, by its name. */
export type NoNote = 'silent' | 'clipped' | 'hum' | 'machine' | 'talk' | 'fewTones' | 'unclear';

/** A note with its interval, and the tones that it was found from. */
export interface Note {
  readonly kind: 'note';
  readonly frequency: number; // Hz, the fundamental
  readonly halfWidth: number; // Hz, 95 %
  readonly comb: Comb;
}

/** What was heard, with the spectrum that it was heard in. */
export type Heard = (Note | { readonly kind: NoNote }) & { readonly spectrum: Spectrum };

/** Up to where the spectrum is looked at. */
export const HIGHEST = 1300; // Hz
const FRAME = 0.05; // s
const AFTER_ONSET = 0.03; // s, while the hand is still near
const LONGEST = 1.45; // s of a pluck that are looked at
const SHORTEST = 0.7;
const SILENT = 0.0008; // effective value, share of full scale
const FULL = 0.985; // of full scale
const CLIPPED = 6; // samples at full scale, one after the other
const STEADY = 1.2; // dB between frames
const LOUD = 0.02; // effective value of a steady sound that is a machine
const QUARTERS = 4;
const TAIL = 3; // dB that a pluck loses at least from its first quarter to its third
const RISE = 0.5; // dB that it may gain from one quarter to the next
const FADED = 25; // dB below the first quarter, where it is lost in the noise
const WIDE = 0.012; // of a tone's frequency, on either side of it
const MAINS = [50, 60] as const; // Hz
const NEAR_MAINS = 0.7; // Hz
const STAYS = 1.5; // dB that a steady tone changes at most
const DRIFT = 0.008; // share by which a plucked tone moves at most
const LEAST_SCORE = 0.3;
const EXPANDED = 2;
const LEAST_WIDTH = 0.1; // Hz

/** Whether the sound was too loud for the microphone: its tops are cut flat. */
function isClipped(samples: Float32Array): boolean {
  let flat = 0;
  return samples.some((sample) => {
    flat = Math.abs(sample) >= FULL ? flat + 1 : 0;
    return flat >= CLIPPED;
  });
}

const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

function isSteady(sound: Sound): boolean {
  const levels = frameLevels(sound, FRAME);
  const middle = mean(levels);
  return Math.sqrt(mean(levels.map((level) => (level - middle) ** 2))) < STEADY;
}

const isOfMains = ({ frequency }: Peak) =>
  MAINS.some((mains) => Math.abs(frequency - mains * Math.round(frequency / mains)) < NEAR_MAINS);

/** What a sound is that neither swells nor dies away. */
function steadyKind(sound: Sound, peaks: readonly Peak[]): NoNote {
  const loudest = [...peaks].sort((a, b) => b.level - a.level).slice(0, 3);
  if (loudest.length > 0 && loudest.every(isOfMains)) return 'hum';
  return effectiveValue(sound.samples) > LOUD ? 'machine' : 'silent';
}

/** When the sound rises most, in seconds, so that enough of it comes after. */
function onsetOf(sound: Sound): number {
  const levels = frameLevels(sound, FRAME);
  const last = levels.length - Math.ceil(SHORTEST / FRAME);
  const rises = levels.slice(0, Math.max(1, last)).map((level, place) => {
    const before = levels.slice(Math.max(0, place - 3), place);
    return place === 0 ? 0 : level - mean(before) + level / 2;
  });
  rises[0] = (levels[0] ?? 0) / 2;
  return rises.indexOf(Math.max(...rises)) * FRAME;
}

/** Equal parts of a pluck, one after the other, each with its spectrum. */
function partsOf(pluck: Sound, count: number): readonly Spectrum[] {
  const length = pluck.samples.length / pluck.rate / count;
  return Array.from({ length: count }, (_, place) =>
    spectrumOf(partOf(pluck, place * length, length), HIGHEST),
  );
}

/** The levels of some tones together, part by part. */
function levelsOf(tones: readonly Peak[], parts: readonly Spectrum[]): readonly number[] {
  const power = (part: Spectrum) =>
    tones.reduce((sum, { frequency }) => {
      const width = Math.max(2, WIDE * frequency);
      return sum + 10 ** (loudestIn(part, frequency - width, frequency + width) / 10);
    }, 0);
  return parts.map((part) => 10 * Math.log10(power(part)));
}

/** Whether tones fall from part to part, as far as they can be told from the noise: voices rise again. */
function dieAway(tones: readonly Peak[], pluck: Sound): boolean {
  const levels = levelsOf(tones, partsOf(pluck, QUARTERS));
  const [first = 0, , third = 0] = levels;
  const falls = levels.every((level, place) => {
    const before = levels[place - 1] ?? Number.POSITIVE_INFINITY;
    return level < before + RISE || level < first - FADED;
  });
  return falls && first - third > TAIL;
}

/** How much a tone loses between the halves, dB, and by which share it moves. */
function changeOf({ frequency }: Peak, halves: readonly Spectrum[]) {
  const [first, second] = halves as [Spectrum, Spectrum];
  const width = Math.max(2, WIDE * frequency);
  const level = (one: Spectrum) => loudestIn(one, frequency - width, frequency + width);
  const at = (one: Spectrum) => frequencyNear(one, frequency, width);
  return { loss: level(first) - level(second), drift: Math.abs(at(second) / at(first) - 1) };
}

/** Whether a series has enough tones to be told from its own harmonics: three, or the first two. */
function isTold({ tones }: Comb): boolean {
  return tones.length > 2 || (tones[0]?.number === 1 && tones[1]?.number === 2);
}

/** What a sound is that swells or dies away. */
function pluckKind(pluck: Sound, peaks: readonly Peak[], sharpening: Sharpening): NoNote | Note {
  const halves = partsOf(pluck, 2);
  const changes = new Map(peaks.map((peak) => [peak, changeOf(peak, halves)]));
  const stays = (peak: Peak) => Math.abs(changes.get(peak)?.loss ?? 0) < STAYS && isOfMains(peak);
  const own = peaks.filter((peak) => !stays(peak));
  if (own.length === 0) return peaks.length > 0 ? 'hum' : 'silent';
  const comb = bestComb(own, sharpening);
  if (!comb) return 'unclear';
  const loudest = [...comb.tones].sort((a, b) => b.level - a.level).slice(0, 3);
  const holds = mean(loudest.map((tone) => changeOf(tone, halves).drift)) < DRIFT;
  if (!dieAway(loudest, pluck) || !holds || comb.score < LEAST_SCORE) return 'talk';
  if (!isTold(comb)) return 'fewTones';
  return {
    kind: 'note',
    frequency: comb.fundamental,
    halfWidth: Math.max(LEAST_WIDTH, EXPANDED * comb.spread),
    comb,
  };
}

/** What a sound of a few seconds is; `sharpening` is what the band's stiffness does to its tones. */
export function hear(sound: Sound, sharpening: Sharpening): Heard {
  const pluck = partOf(sound, onsetOf(sound) + AFTER_ONSET, LONGEST);
  const spectrum = spectrumOf(pluck, HIGHEST);
  const as = (kind: NoNote | Note): Heard =>
    typeof kind === 'string' ? { kind, spectrum } : { ...kind, spectrum };
  if (isClipped(sound.samples)) return as('clipped');
  if (effectiveValue(sound.samples) < SILENT) return as('silent');
  const peaks = peaksOf(spectrum);
  return as(isSteady(sound) ? steadyKind(sound, peaks) : pluckKind(pluck, peaks, sharpening));
}

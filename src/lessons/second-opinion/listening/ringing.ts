/**
 * How tones ring: a plucked band’s die away and keep their frequency, voices rise again and glide, the mains stay.
 * Units: Hz; levels in decibels.
 * Source: our own rules, tried on synthesised sounds.
 */
import { frequencyNear, type Peak } from './peaks.ts';
import { partOf, type Sound } from './sound.ts';
import { HIGHEST, loudestIn, type Spectrum, spectrumOf } from './spectrum.ts';

const QUARTERS = 4;
const TAIL = 3; // dB that a pluck loses at least from its first quarter to its third
const RISE = 0.5; // dB that it may gain from one quarter to the next
const FADED = 25; // dB below the first quarter, where it is lost in the noise
const WIDE = 0.012; // of a tone's frequency, on either side of it

/** Equal parts of a pluck, one after the other, each with its spectrum. */
export function partsOf(pluck: Sound, count: number): readonly Spectrum[] {
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
export function dieAway(tones: readonly Peak[], pluck: Sound): boolean {
  const levels = levelsOf(tones, partsOf(pluck, QUARTERS));
  const [first = 0, , third = 0] = levels;
  const falls = levels.every((level, place) => {
    const before = levels[place - 1] ?? Number.POSITIVE_INFINITY;
    return level < before + RISE || level < first - FADED;
  });
  return falls && first - third > TAIL;
}

/** How much a tone loses between the halves, dB, and by which share it moves. */
export function changeOf({ frequency }: Peak, halves: readonly Spectrum[]) {
  const [first, second] = halves as [Spectrum, Spectrum];
  const width = Math.max(2, WIDE * frequency);
  const level = (one: Spectrum) => loudestIn(one, frequency - width, frequency + width);
  const at = (one: Spectrum) => frequencyNear(one, frequency, width);
  return { loss: level(first) - level(second), drift: Math.abs(at(second) / at(first) - 1) };
}

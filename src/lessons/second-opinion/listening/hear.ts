/**
 * What a sound is: a plucked band with its note, or something that must not be taken for one.
 * Units: Hz, s; levels in decibels.
 * Source: our own rules, tried on synthesised plucks, hum, talk and machines.
 */
import { bestComb, type Comb } from './comb.ts';
import { isClipped, isSteady, onsetOf } from './loudness.ts';
import { type Peak, peaksOf } from './peaks.ts';
import { changeOf, dieAway, partsOf } from './ringing.ts';
import type { Sharpening } from './series.ts';
import { effectiveValue, mean, partOf, type Sound } from './sound.ts';
import { HIGHEST, type Spectrum, spectrumOf } from './spectrum.ts';

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

const AFTER_ONSET = 0.03; // s, while the hand is still near
const LONGEST = 1.45; // s of a pluck that are looked at
const SILENT = 0.0008; // effective value, share of full scale
const LOUD = 0.02; // effective value of a steady sound that is a machine
const MAINS = [50, 60] as const; // Hz
const NEAR_MAINS = 0.7; // Hz
const STAYS = 1.5; // dB that a steady tone changes at most
const DRIFT = 0.008; // share by which a plucked tone moves at most
const LEAST_SCORE = 0.3;
const EXPANDED = 2;
const LEAST_WIDTH = 0.1; // Hz

const isOfMains = ({ frequency }: Peak) =>
  MAINS.some((mains) => Math.abs(frequency - mains * Math.round(frequency / mains)) < NEAR_MAINS);

/** What a sound is that neither swells nor dies away. */
function steadyKind(sound: Sound, peaks: readonly Peak[]): NoNote {
  const loudest = [...peaks].sort((a, b) => b.level - a.level).slice(0, 3);
  if (loudest.length > 0 && loudest.every(isOfMains)) return 'hum';
  return effectiveValue(sound.samples) > LOUD ? 'machine' : 'silent';
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

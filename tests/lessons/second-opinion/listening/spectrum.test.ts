/** The parts of the listening, each by itself: levels, peaks, a fitted series, the samples that are made. */
import { describe, expect, it } from 'vitest';
import { frequencyNear, peaksOf } from '../../../../src/lessons/second-opinion/listening/peaks.ts';
import { fitted, toneOf } from '../../../../src/lessons/second-opinion/listening/series.ts';
import {
  effectiveValue,
  frameLevels,
  partOf,
} from '../../../../src/lessons/second-opinion/listening/sound.ts';
import {
  loudestIn,
  spectrumOf,
} from '../../../../src/lessons/second-opinion/listening/spectrum.ts';
import { partialsOf, soundOf } from '../../../../src/lessons/second-opinion/listening/synthesis.ts';

const made = { rate: 48_000, seconds: 1.4, starts: 0, loudness: 1, noise: 1e-4, seed: 4 };
const sine = (frequency: number, amplitude: number) =>
  soundOf([{ frequency, amplitude, lasts: 1e6 }], made);

describe('a spectrum', () => {
  it.each([
    [100, 1, 0],
    [317.3, 0.1, -20],
  ])(
    'shows a sine of %f Hz and amplitude %f at its frequency and level',
    (frequency, amplitude, level) => {
      const spectrum = spectrumOf(sine(frequency, amplitude), 1300);
      expect(loudestIn(spectrum, 20, 1300)).toBeCloseTo(level, 0);
      expect(frequencyNear(spectrum, frequency, 5)).toBeCloseTo(frequency, 1);
    },
  );

  it('has the peaks of two sines and no other', () => {
    const tones = [90, 181].map((frequency) => ({ frequency, amplitude: 0.2, lasts: 1e6 }));
    const peaks = peaksOf(spectrumOf(soundOf(tones, made), 1300));
    expect(peaks.map(({ frequency }) => Math.round(frequency))).toEqual([90, 181]);
    for (const { spread } of peaks) expect(spread).toBeLessThan(0.1);
  });

  it('has no peak in noise alone', () => {
    for (const seed of [1, 2, 3, 4, 5]) {
      const noise = soundOf([], { ...made, seed, noise: 0.1 });
      expect(peaksOf(spectrumOf(noise, 1300))).toEqual([]);
    }
  });
});

describe('levels', () => {
  it('are those of a sine by its frames, and of a part by its own samples', () => {
    const sound = sine(200, 0.5);
    expect(effectiveValue(sound.samples)).toBeCloseTo(0.5 / Math.SQRT2, 2);
    expect(frameLevels(partOf(sound, 0.1, 1), 0.05)).toHaveLength(20);
    for (const level of frameLevels(partOf(sound, 0.1, 1), 0.05))
      expect(level).toBeCloseTo(-9.03, 1);
  });
});

describe('a series', () => {
  const truth = { base: 100, bend: 0.4 };
  const tones = [2, 3, 4, 5].map((number) => ({
    number,
    frequency: toneOf(truth, number),
    level: -20,
    spread: 0.02,
  }));
  it('finds the fundamental that is not among its tones', () => {
    const found = fitted(tones, 40, 100);
    expect(found.fundamental).toBeCloseTo(100.4, 6);
    expect(found.spread).toBeLessThan(0.02);
  });
  it('is less sure the further its tones lie beside it', () => {
    const shifted = tones.map((tone) => ({
      ...tone,
      frequency: tone.frequency + (tone.number % 2 ? 0.3 : -0.3),
    }));
    expect(fitted(shifted, 40, 100).spread).toBeGreaterThan(5 * fitted(tones, 40, 100).spread);
  });
  it('leans on what was believed of the stiffness where it has one tone', () => {
    const [second] = tones;
    const found = fitted(second ? [second] : [], 40, 100);
    expect(found.fundamental).toBeCloseTo(100.4, 3);
    expect(found.spread).toBeGreaterThan(0.1);
  });
});

describe('a pluck as it is made', () => {
  it('lacks the tone that has a node where it is plucked, and fades below the microphone’s limit', () => {
    const pluck = { tones: [50, 100, 150, 200], at: 0.25, lasts: 0.7 };
    const [first = 0, second = 0, , fourth = 0] = partialsOf({ ...pluck, cut: 0 }).map(
      ({ amplitude }) => amplitude,
    );
    expect(fourth).toBeCloseTo(0, 12);
    expect(second / first).toBeCloseTo(1 / Math.SQRT2, 12);
    const phone = partialsOf({ ...pluck, cut: 200 }).map(({ amplitude }) => amplitude);
    expect((phone[0] ?? 0) / (phone[1] ?? 1)).toBeLessThan(0.5);
  });
  it('dies away to 1/e in the time that it lasts', () => {
    const { samples, rate } = soundOf([{ frequency: 100, amplitude: 1, lasts: 0.5 }], {
      ...made,
      noise: 0,
    });
    const level = (at: number) => effectiveValue(partOf({ samples, rate }, at, 0.05).samples);
    expect(level(0.6) / level(0.1)).toBeCloseTo(1 / Math.E, 2);
  });
});

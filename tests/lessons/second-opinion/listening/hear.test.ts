/** What the listening makes of synthesised sounds: plucks with their note, and what must never become a number. */
import { describe, expect, it } from 'vitest';
import { pitchFromStress } from '../../../../src/core/span.ts';
import { type Heard, hear } from '../../../../src/lessons/second-opinion/listening/hear.ts';
import {
  RECORDED_STRESS,
  recording,
} from '../../../../src/lessons/second-opinion/listening/recording.ts';
import { partialsOf, soundOf } from '../../../../src/lessons/second-opinion/listening/synthesis.ts';
import { sharpeningOf, stripOf } from '../../../../src/lessons/second-opinion/strip.ts';
import { millPluck } from './mill-plucks.ts';
import { clipped, hum, machine, quiet, talk } from './rooms.ts';

const PLUCKS = Number(process.env['PLUCKS'] ?? 250);
const strip = stripOf('narrow', 0.55);
const sharpening = sharpeningOf(strip);
const rates = [44_100, 48_000];
const seeds = Array.from({ length: 10 }, (_, seed) => seed + 1);

/** The narrow band under a stress, as a phone hears it. */
function pluck(stress: number, rate: number, at = 0.25, cut = 120) {
  const tones = [1, 2, 3, 4, 5, 6].map((harmonic) =>
    pitchFromStress({ ...strip, stress, harmonic }),
  );
  const partials = partialsOf({ tones, at, lasts: 0.7, cut });
  const sound = soundOf(partials, {
    rate,
    seconds: 2.4,
    starts: 0.4,
    loudness: 0.2,
    noise: 0.005,
    seed: 3,
  });
  return { sound, note: tones[0] ?? Number.NaN };
}

const noteOf = (heard: Heard): number => (heard.kind === 'note' ? heard.frequency : Number.NaN);

describe('a pluck', () => {
  it.each(rates.flatMap((rate) => [60e6, 96e6, 110e6, 170e6].map((stress) => [rate, stress])))(
    'at %i samples a second and %i Pa is heard to 0.5 %%',
    (rate = 0, stress = 0) => {
      const { sound, note } = pluck(stress, rate);
      expect(Math.abs(noteOf(hear(sound, sharpening)) / note - 1)).toBeLessThan(0.005);
    },
  );

  it('is heard by its harmonics where the phone hears nothing of the fundamental', () => {
    const { sound, note } = pluck(110e6, 48_000, 0.25, 400);
    const heard = hear(sound, sharpening);
    expect(Math.abs(noteOf(heard) / note - 1)).toBeLessThan(0.005);
  });

  it('in the recording is the note of the recorded stress', () => {
    const note = pitchFromStress({ ...strip, stress: RECORDED_STRESS });
    for (const rate of rates) {
      const heard = hear(recording(rate), sharpening);
      expect(Math.abs(noteOf(heard) - note)).toBeLessThan(
        heard.kind === 'note' ? heard.halfWidth : 0,
      );
    }
  });
});

describe(`${PLUCKS} plucks over the six mills`, () => {
  const all = Array.from({ length: PLUCKS }, (_, seed) => millPluck(seed));

  it('give intervals that hold the truth in 93 % of the notes at least, and few plucks go unheard', {
    timeout: 120_000,
  }, () => {
    const notes = all.flatMap(({ sound, note, sharpening: told }) => {
      const heard = hear(sound, told);
      return heard.kind === 'note' ? [{ note, ...heard }] : [];
    });
    const held = notes.filter(
      ({ note, frequency, halfWidth }) => Math.abs(frequency - note) <= halfWidth,
    );
    expect(notes.length / PLUCKS).toBeGreaterThan(0.9);
    expect(held.length / notes.length).toBeGreaterThanOrEqual(0.93);
    const widths = notes.map(({ note, halfWidth }) => halfWidth / note).sort((a, b) => a - b);
    expect(widths[Math.floor(widths.length / 2)]).toBeLessThan(0.005); // no use if it held everything
  });
});

describe('what is no pluck', () => {
  it.each(rates)('at %i samples a second is told by its name', (rate) => {
    for (const seed of seeds) {
      expect(hear(quiet(rate, seed), sharpening).kind).toBe('silent');
      expect(hear(hum(50, rate, seed), sharpening).kind).toBe('hum');
      expect(hear(hum(60, rate, seed), sharpening).kind).toBe('hum');
      expect(hear(machine(rate, seed), sharpening).kind).toBe('machine');
    }
  });

  it.each([1, 2, 4])('is never a number where %i people talk', (people) => {
    const kinds = seeds.map((seed) => hear(talk(people, 48_000, seed), sharpening).kind);
    expect(kinds).not.toContain('note');
    expect(kinds.filter((kind) => kind === 'talk').length).toBeGreaterThan(seeds.length / 2);
  });

  it('is a pluck that the microphone cuts off, however clear', () => {
    const { sound } = pluck(110e6, 48_000);
    expect(hear(sound, sharpening).kind).toBe('note');
    expect(hear(clipped(sound, 12), sharpening).kind).toBe('clipped');
  });

  it('is a single tone, which may be any of the series', () => {
    const alone = [{ frequency: 210, amplitude: 1, lasts: 0.7 }];
    const sound = soundOf(alone, {
      rate: 48_000,
      seconds: 2.4,
      starts: 0.4,
      loudness: 0.2,
      noise: 0.002,
      seed: 5,
    });
    expect(hear(sound, sharpening).kind).toBe('fewTones');
  });
});

/** Sounds that are no plucked band, from a seed: hiss, mains, talk, a machine, and a pluck that is too loud. */
import { randomSource } from '../../../../src/core/random.ts';
import type { Sound } from '../../../../src/lessons/second-opinion/listening/sound.ts';
import { soundOf } from '../../../../src/lessons/second-opinion/listening/synthesis.ts';

const SECONDS = 3;
const made = { seconds: SECONDS, starts: 0, loudness: 0.1, noise: 0.0004 };
const lasting = (frequency: number, amplitude: number) => ({ frequency, amplitude, lasts: 1e6 });

/** A quiet room. */
export const quiet = (rate: number, seed: number): Sound => soundOf([], { ...made, rate, seed });

/** Lamps and motors on the mains, at so many hertz. */
export const hum = (mains: number, rate: number, seed: number): Sound =>
  soundOf(
    [1, 2, 3, 4, 6].map((number) => lasting(number * mains, 1 / number)),
    { ...made, rate, seed, noise: 0.001 },
  );

/** A saw that runs: hiss, its motor, its teeth. */
export const machine = (rate: number, seed: number): Sound =>
  soundOf([lasting(48.7, 1), lasting(97.4, 0.8), lasting(731, 1.2), lasting(1462, 0.5)], {
    ...made,
    rate,
    seed,
    noise: 0.12,
  });

/** One voice: syllables with pauses, each with a pitch that glides, and two formants. */
function voice(length: number, rate: number, seed: number): Float32Array {
  const { uniform } = randomSource(seed);
  const samples = new Float32Array(length);
  let place = 0;
  while (place < length) {
    const syllable = Math.round(rate * (0.12 + 0.2 * uniform()));
    const pitch = 95 + 130 * uniform();
    const glide = (uniform() - 0.5) * 0.5;
    let phase = 0;
    for (let step = 0; step < syllable && place + step < length; step += 1) {
      const share = step / syllable;
      phase += (2 * Math.PI * pitch * (1 + glide * share)) / rate;
      const formants = [1, 2, 3, 4, 5, 6].reduce(
        (sum, n) => sum + Math.sin(n * phase) / (1 + Math.abs(n - 3)),
        0,
      );
      samples[place + step] = 0.06 * Math.sin(Math.PI * share) ** 2 * formants;
    }
    place += syllable + Math.round(rate * 0.15 * uniform());
  }
  return samples;
}

/** A room in which so many people talk. */
export function talk(people: number, rate: number, seed: number): Sound {
  const room = quiet(rate, seed);
  const voices = Array.from({ length: people }, (_, person) =>
    voice(room.samples.length, rate, 100 * seed + person),
  );
  return {
    rate,
    samples: room.samples.map((sample, place) =>
      voices.reduce((sum, one) => sum + (one[place] ?? 0), sample),
    ),
  };
}

/** The same sound through a microphone that it is too loud for. */
export const clipped = ({ samples, rate }: Sound, times: number): Sound => ({
  rate,
  samples: samples.map((sample) => Math.max(-1, Math.min(1, times * sample))),
});

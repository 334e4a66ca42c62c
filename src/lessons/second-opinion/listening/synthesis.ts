/**
 * A plucked band as sound, made by arithmetic: its tones die away, each from its own loudness, the higher the sooner.
 * Units: Hz, s; loudness as a share of full scale.
 * Source: tones: core/span; loudness of a string plucked at a share of its length, sin(nπx)/n: definition; dying away and
 * what a phone hears of low tones: our own choice.
 */
import { randomSource } from '../../../core/random.ts';
import type { Sound } from './sound.ts';

/** One tone of a sound. */
export interface Partial {
  readonly frequency: number;
  readonly amplitude: number;
  readonly lasts: number; // s until it has fallen to 1/e
}

/** How a band is plucked and heard. */
export interface Pluck {
  /** The frequency of each tone, the lowest first. */
  readonly tones: readonly number[];
  readonly at: number; // share of the span where it is plucked
  readonly lasts: number; // s, of the lowest tone
  /** Below this the microphone fades, Hz; 0 for an ear. */
  readonly cut: number;
}

/** Share of a tone that passes a microphone that fades below `cut`, by the square of the frequency. */
const heard = (frequency: number, cut: number): number => 1 / Math.hypot(1, (cut / frequency) ** 2);

/** The tones of a pluck; the loudest has amplitude 1. */
export function partialsOf({ tones, at, lasts, cut }: Pluck): readonly Partial[] {
  const partials = tones.map((frequency, place) => ({
    frequency,
    amplitude:
      (Math.abs(Math.sin((place + 1) * Math.PI * at)) / (place + 1)) * heard(frequency, cut),
    lasts: lasts / (1 + 0.25 * place),
  }));
  const loudest = Math.max(...partials.map(({ amplitude }) => amplitude));
  return partials.map((partial) => ({ ...partial, amplitude: partial.amplitude / loudest }));
}

const SWELL = 0.004; // s in which the tone sets in, so that it does not click

/** What is to be made of tones. */
export interface Made {
  readonly rate: number;
  readonly seconds: number;
  readonly starts: number; // s, when the pluck comes
  readonly loudness: number; // of the loudest tone, share of full scale
  readonly noise: number; // effective value, share of full scale
  readonly seed: number;
}

/** Adds a tone from a sample on: a pointer that turns and shrinks by the same factor from each sample to the next. */
function addTone(samples: Float32Array, from: number, tone: Partial, rate: number, phase: number) {
  const { frequency, amplitude, lasts } = tone;
  const [shrink, turn] = [Math.exp(-1 / (lasts * rate)), (2 * Math.PI * frequency) / rate];
  const [across, up] = [shrink * Math.cos(turn), shrink * Math.sin(turn)];
  let [x, y] = [amplitude * Math.cos(phase), amplitude * Math.sin(phase)];
  let silence = 1;
  const stays = Math.exp(-1 / (SWELL * rate));
  for (let place = from; place < samples.length; place += 1) {
    silence *= stays;
    samples[place] = (samples[place] as number) + (1 - silence) * y;
    [x, y] = [x * across - y * up, x * up + y * across];
  }
}

/** The sound of some tones that set in together, in a room with a little noise. */
export function soundOf(partials: readonly Partial[], made: Made): Sound {
  const { rate, seconds, starts, loudness, noise, seed } = made;
  const random = randomSource(seed);
  const samples = new Float32Array(Math.round(rate * seconds));
  for (const partial of partials) {
    const tone = { ...partial, amplitude: loudness * partial.amplitude };
    addTone(samples, Math.round(starts * rate), tone, rate, 2 * Math.PI * random.uniform());
  }
  return {
    samples: noise > 0 ? samples.map((sample) => sample + noise * random.normal()) : samples,
    rate,
  };
}

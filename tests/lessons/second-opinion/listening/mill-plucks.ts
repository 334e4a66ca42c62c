/** Plucks of the six invented mills' spans, synthesised from a seed, each with the note that is in it. */
import { randomSource } from '../../../../src/core/random.ts';
import { massPerLength, massRatio, pitchFromStress } from '../../../../src/core/span.ts';
import type { Sound } from '../../../../src/lessons/second-opinion/listening/sound.ts';
import {
  type Partial,
  partialsOf,
  soundOf,
} from '../../../../src/lessons/second-opinion/listening/synthesis.ts';
import { sharpeningOf } from '../../../../src/lessons/second-opinion/strip.ts';
import { derivedMills } from '../../../published/derived-cases.ts';
import { mills, steel } from '../../../published/mills/mill.ts';

/** A pluck with its truth, and what the listener is told of the band beforehand. */
export interface MillPluck {
  readonly sound: Sound;
  readonly note: number; // Hz
  readonly sharpening: number; // Hz²
}

const LETTERS = Object.keys(derivedMills);
const TONES = Array.from({ length: 10 }, (_, place) => place + 1);
const HIGHEST = 1500; // Hz

type Between = (low: number, high: number) => number;

/** A span of one of the mills, between the guides or between the wheels. */
function stripOf(letter: string, isGuided: boolean) {
  const mill = mills[letter];
  if (!mill) throw new Error(`no mill ${letter}`);
  const { n, area } = mill;
  const thickness = n('t');
  const mass = massPerLength({
    density: steel.density,
    widthOverTeeth: n('W'),
    bodyWidth: n('body'),
    thickness,
  });
  return {
    span: isGuided ? n('guide') : n('C') * Math.cos(mill.halfAngle),
    density: steel.density,
    thickness,
    youngsModulus: steel.youngsModulus,
    massRatio: massRatio(mass, steel.density, area),
    ends: isGuided ? ('guides' as const) : ('wheels' as const),
  };
}

/** What sounds beside the band's own tones: its twist, 1.25 to 2.9 times higher, and the mains. */
function others(note: number, mains: number, between: Between): readonly Partial[] {
  const twist = note * between(1.25, 2.9);
  const tone = (frequency: number, decibels: number, lasts: number): Partial => ({
    frequency,
    amplitude: 10 ** (decibels / 20),
    lasts,
  });
  return [1, 2, 3].flatMap((number) => [
    tone(number * twist, between(-28, -14) - 20 * Math.log10(number), between(0.1, 0.5)),
    tone(number * mains, between(-44, -24), 1e6),
  ]);
}

/** The pluck of a seed: its mill, span, tension, player, microphone and room. */
export function millPluck(seed: number): MillPluck {
  const { uniform } = randomSource(seed);
  const between: Between = (low, high) => low + (high - low) * uniform();
  const strip = stripOf(LETTERS[seed % LETTERS.length] ?? 'A', uniform() < 0.5);
  const stress = between(60e6, 170e6);
  const tones = TONES.map((harmonic) => pitchFromStress({ ...strip, stress, harmonic }));
  const [note = 0] = tones;
  const own = partialsOf({
    tones: tones.filter((tone) => tone < HIGHEST),
    at: between(0.15, 0.35),
    lasts: between(0.2, 1.2),
    cut: between(60, 150),
  }).map((partial) => ({ ...partial, amplitude: partial.amplitude * 10 ** between(-0.3, 0.3) }));
  const loudness = 10 ** between(-1.7, -0.7);
  const sound = soundOf([...own, ...others(note, seed % 2 ? 50 : 60, between)], {
    rate: uniform() < 0.5 ? 44_100 : 48_000,
    seconds: 2.4,
    starts: between(0.3, 0.7),
    loudness,
    noise: loudness * 10 ** between(-1.5, -0.5),
    seed: seed + 1000,
  });
  return { sound, note, sharpening: sharpeningOf(strip) * between(0.85, 1.15) };
}

/** Plucks of the six invented mills' spans, synthesised from a seed, each with the note that is in it. */
import { randomSource } from '../../../../src/core/random.ts';
import { massRatio, type PluckedStrip, pitchFromStress } from '../../../../src/core/span.ts';
import { massPerLength } from '../../../../src/core/span/band-mass.ts';
import type { Sound } from '../../../../src/lessons/second-opinion/listening/sound.ts';
import { partialsOf, soundOf } from '../../../../src/lessons/second-opinion/listening/synthesis.ts';
import { sharpeningOf } from '../../../../src/lessons/second-opinion/strip.ts';
import { derivedMills } from '../../../published/derived-cases.ts';
import { valueAt } from '../../../published/cases.ts';

/** A pluck with its truth, and what the listener is told of the band beforehand. */
export interface MillPluck {
  readonly sound: Sound;
  readonly note: number; // Hz
  readonly sharpening: number; // Hz²
}

const DENSITY = 7850;
const TONES = 10;

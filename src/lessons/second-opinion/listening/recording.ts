/**
 * A recording to try the listening on, made by arithmetic: the free span at Ottersleigh as a phone would hear it.
 * Units: SI.
 * Source: listening/synthesis; the stress is that of the three routes, by the note that was read there.
 */
import { pitchFromStress } from '../../../core/span.ts';
import { OTTERSLEIGH } from '../../../models/mills/ottersleigh.ts';
import { PHONE_HEARS_FROM } from '../phone.ts';
import { stripOf } from '../strip.ts';
import type { Sound } from './sound.ts';
import { partialsOf, soundOf } from './synthesis.ts';

/** The stress in the recorded band, Pa. */
export const RECORDED_STRESS = 96e6;

const TONES = [1, 2, 3, 4, 5, 6, 7];

/** The recording at a rate of samples. */
export function recording(rate: number): Sound {
  const strip = { ...stripOf('narrow', OTTERSLEIGH.guideSpan), stress: RECORDED_STRESS };
  const tones = TONES.map((harmonic) => pitchFromStress({ ...strip, harmonic }));
  const partials = partialsOf({ tones, at: 0.27, lasts: 0.8, cut: 1.5 * PHONE_HEARS_FROM });
  return soundOf(partials, {
    rate,
    seconds: 2.4,
    starts: 0.4,
    loudness: 0.3,
    noise: 0.004,
    seed: 12,
  });
}

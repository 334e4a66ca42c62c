/**
 * Hear the span: the tones of the drawn band, made here and played once, while the drawn band swings slowed down.
 * Units: SI in the values.
 */
import { pitchFromStress } from '../../core/span.ts';
import type { LessonPart, PartPlace } from '../../models/lesson-part.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { partialsOf, soundOf } from './listening/synthesis.ts';
import { player } from './player.ts';
import { type BandName, stripOf } from './strip.ts';

const TONES = [1, 2, 3, 4, 5, 6];
const SECONDS = 2.4;
const SLOWED = 100; // times, so that the eye can follow

function bandSound(values: ReturnType<PartPlace['values']>, rate: number) {
  const { stress, span, band } = values as {
    readonly stress: number;
    readonly span: number;
    readonly band: BandName;
  };
  const strip = stripOf(band, span);
  const tones = TONES.map((harmonic) => pitchFromStress({ ...strip, stress, harmonic }));
  const partials = partialsOf({ tones, at: 0.25, lasts: 0.7, cut: 0 });
  return soundOf(partials, {
    rate,
    seconds: SECONDS,
    starts: 0.02,
    loudness: 0.35,
    noise: 0,
    seed: 1,
  });
}

/** Lets the drawn band swing as long as it sounds; false where the reader wants nothing to move. */
function swing(element: HTMLElement, pitch: number): boolean {
  if (matchMedia('(prefers-reduced-motion: reduce)').matches) return false;
  const half = (1000 * SLOWED) / pitch / 2; // ms
  for (const path of element.closest('live-figure')?.querySelectorAll('.swing') ?? [])
    path.animate([{ transform: 'scaleY(1)' }, { transform: 'scaleY(-1)' }], {
      duration: half,
      iterations: 2 * Math.max(1, Math.round((1000 * SECONDS) / half / 2)),
      direction: 'alternate',
      easing: 'ease-in-out',
    });
  return true;
}

/** What is said of a note that is played. */
function played(note: string, isSwinging: boolean): string {
  const drawing = isSwinging ? ` The drawing swings ${SLOWED} times more slowly.` : '';
  return `${note}.${drawing} A phone plays low notes faintly: headphones help.`;
}

/** The part. */
export const part: LessonPart = ({ element, values, system, device, say }) => {
  const play = player(device);
  return {
    hear: () => {
      const now = values();
      const pitch = Number(now['pitch']);
      const note = formatQuantity(pitch, 'frequency', system());
      if (play((rate) => bandSound(now, rate))) say(played(note, swing(element, pitch)));
      else say('This browser plays no sound.');
    },
  };
};

/**
 * Listen to a plucked band: through the microphone, which asks first, or to a recording made here. What is heard is drawn
 * and told in words; only a clear note goes into the lesson's boxes.
 * Units: SI in the values.
 */
import { h, render } from 'preact';
import type { LessonPart, PartPlace } from '../../models/lesson-part.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { type Heard, hear, type Note } from './listening/hear.ts';
import { type Microphone, openMicrophone } from './listening/microphone.ts';
import { recording } from './listening/recording.ts';
import { SpectrumView } from './listening/SpectrumView.tsx';
import type { Sound } from './listening/sound.ts';
import {
  ASKING,
  GAVE_UP,
  LISTENING,
  NO_MICROPHONE,
  NO_NOTE,
  noteFound,
  TAKEN,
} from './listening/words.ts';
import { player } from './player.ts';
import { type BandName, sharpeningOf, stripOf } from './strip.ts';

const EVERY = 400; // ms between two looks
const ENOUGH = 1.5; // s before the first
const LONGEST = 30_000; // ms
const RATE = 48_000; // of the recording where no device plays it

function sharpening({ values }: PartPlace): number {
  const { span, band } = values();
  return sharpeningOf(stripOf(band as BandName, Number(span)));
}

/** Draws what is heard, and says it; a note goes into the boxes. */
function tell(place: PartPlace, heard: Heard): void {
  const drawing = place.element.querySelector('[data-place]');
  if (drawing) render(h(SpectrumView, { heard }), drawing);
  if (heard.kind === 'note') takeNote(place, heard);
  else place.say(NO_NOTE[heard.kind]);
}

/** Puts a note into the boxes, and says it. */
function takeNote(place: PartPlace, { frequency, halfWidth, comb }: Note): void {
  place.set('note', Math.round(100 * frequency) / 100);
  place.set('noteWidth', Math.round(100 * halfWidth) / 100);
  const note = formatQuantity(frequency, 'frequency', place.system(), { uncertainty: halfWidth });
  place.say(
    noteFound(
      note,
      comb.tones.map(({ number }) => number),
    ),
  );
}

/** Looks at a sound every now and then until something ends it. */
function listening(place: PartPlace, microphone: Microphone, ended: (words?: string) => void) {
  const look = (sound: Sound) => {
    if (sound.samples.length < ENOUGH * sound.rate) return;
    const heard = hear(sound, sharpening(place));
    tell(place, heard);
    if (heard.kind === 'note' || heard.kind === 'machine') ended();
  };
  const looking = setInterval(() => look(microphone.heard()), EVERY);
  const giveUp = setTimeout(() => ended(GAVE_UP), LONGEST);
  return () => {
    clearInterval(looking);
    clearTimeout(giveUp);
    microphone.close();
  };
}

/** Shows the button that can be pressed now. */
function showButtons(element: HTMLElement, isListening: boolean): void {
  for (const action of ['listen', 'stop'])
    for (const button of element.querySelectorAll<HTMLElement>(`[data-action="${action}"]`))
      button.hidden = (action === 'stop') !== isListening;
}

/** Opens the microphone and listens until something ends it; what was asked for before gives way. */
function microphoneSession(place: PartPlace) {
  let stop: (() => void) | undefined;
  let asked = 0;
  const end = (words?: string) => {
    asked += 1;
    stop?.();
    stop = undefined;
    showButtons(place.element, false);
    if (words) place.say(words);
  };
  const start = async () => {
    end(ASKING);
    const mine = asked;
    const microphone = await openMicrophone(() => end(TAKEN));
    if (typeof microphone === 'string') return place.say(NO_MICROPHONE[microphone]);
    if (mine !== asked) return microphone.close();
    showButtons(place.element, true);
    place.say(LISTENING);
    stop = listening(place, microphone, end);
  };
  return { start, end };
}

/** The part. */
export const part: LessonPart = (place) => {
  const play = player(place.device);
  const { start, end } = microphoneSession(place);
  return {
    listen: () => void start(),
    stop: () => end(GAVE_UP),
    recording: () => {
      end();
      let sound = recording(RATE);
      play((rate) => {
        sound = recording(rate);
        return sound;
      });
      tell(place, hear(sound, sharpening(place)));
    },
  };
};

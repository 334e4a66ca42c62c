/** What is said of what was heard, and of what could not be. Units: none; numbers come in as text. */
import type { NoNote } from './hear.ts';
import type { NoMicrophone } from './microphone.ts';

/** Why no note was taken from a sound. */
export const NO_NOTE: Readonly<Record<NoNote, string>> = {
  silent: 'Nothing to hear yet. Hold the phone close to the middle of the span and pluck the band.',
  clipped:
    'Too loud for the microphone: the sound is cut off, so no note is taken from it. Move the phone away, or pluck more softly.',
  hum: 'This is the steady hum of the mains, not a band. Move away from motors, lamps and chargers, and pluck again.',
  machine:
    'A machine is running. Stop: switch the saw off, lock it out, and wait until the band stands still. Never come near a moving band to measure it.',
  talk: 'Voices or other changing sounds, no plucked band. Wait until it is quiet, and pluck again.',
  fewTones:
    'Too few tones to tell the first from its harmonics. Pluck a quarter of the way along the span, closer to the phone.',
  unclear:
    'Something sounded, but no series of tones fits it. Pluck the middle of the width, not the teeth, and let it ring.',
};

/** Why there is no microphone. */
export const NO_MICROPHONE: Readonly<Record<NoMicrophone, string>> = {
  refused:
    'The microphone was refused, so nothing is heard. Allow it for this site in the browser’s settings, or type the note from any tuner.',
  absent: 'This device has no microphone. Type the note from any tuner instead.',
  busy: 'Another program is using the microphone. Close it and try again, or type the note from any tuner.',
  insecure:
    'This browser gives no microphone to this page. Open the site over https, or type the note from any tuner.',
};

/** Until the reader has answered the browser. */
export const ASKING = 'Waiting for the microphone: your browser asks you first.';

/** While the page listens. */
export const LISTENING = 'Listening. Nothing is recorded or sent. Pluck the still band now.';

/** The microphone went away in the middle. */
export const TAKEN =
  'The microphone was taken away, so listening has stopped. Nothing is taken from what was heard.';

/** Nobody plucked. */
export const GAVE_UP = 'Listening has stopped.';

/** A note was found: with its interval, and the numbers of the tones that it was found from. */
export function noteFound(note: string, numbers: readonly number[]): string {
  const tones = `${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
  const isFirstThere = numbers[0] === 1;
  return `A plucked band: ${note}, found from tones ${tones}${isFirstThere ? '' : '; the first was too faint, and follows from the others'}.`;
}

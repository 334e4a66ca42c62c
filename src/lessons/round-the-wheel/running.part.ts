/**
 * Lets the marked place run round with the band, slowed down so that the eye can follow, until it is stopped. Where the
 * reader wants nothing to move, each press takes it to the next piece of the lap.
 * Units: SI in the values.
 */
import type { LessonPart, PartPlace } from '../../models/lesson-part.ts';
import { lapEnds } from './lap.ts';

const SLOWED = 40; // times
const LONGEST_STEP = 0.1; // s between two frames; a tab that was hidden does not jump

const number = ({ values }: PartPlace, name: string) => Number(values()[name]);

/** Shows the button that can be pressed now. */
function showButtons({ element }: PartPlace, isRunning: boolean): void {
  for (const button of element.querySelectorAll<HTMLElement>('[data-action]'))
    button.hidden = (button.dataset['action'] === 'stop') !== isRunning;
}

/** Moves the place as far as the band runs in a time. */
function moveOn(place: PartPlace, seconds: number): void {
  const laps = (seconds * number(place, 'speed')) / number(place, 'loopLength') / SLOWED;
  place.set('place', (number(place, 'place') + laps) % 1);
}

/** Takes the place to the middle of the next piece of the lap. */
function stepOn(place: PartPlace): void {
  const { slack, idle, log, cutting } = lapEnds(number(place, 'strandShare'));
  const edges = [0, slack, idle, log, cutting, 1];
  const middles = edges.slice(1).map((end, piece) => (end + (edges[piece] ?? 0)) / 2);
  const now = number(place, 'place');
  place.set('place', middles.find((middle) => middle > now + 1e-6) ?? middles[0] ?? 0);
}

/** Frames until stopped. */
function running(place: PartPlace) {
  let frame = 0;
  let last: number | undefined;
  const tick = (now: number) => {
    moveOn(place, Math.min(LONGEST_STEP, (now - (last ?? now)) / 1000));
    last = now;
    frame = requestAnimationFrame(tick);
  };
  return {
    start: () => {
      last = undefined;
      frame = requestAnimationFrame(tick);
    },
    stop: () => cancelAnimationFrame(frame),
  };
}

/** The part. */
export const part: LessonPart = (place) => {
  const { start, stop } = running(place);
  return {
    run: () => {
      if (matchMedia('(prefers-reduced-motion: reduce)').matches) {
        stepOn(place);
        return place.say(
          'Your device asks for less motion: each press takes the dot one piece on.',
        );
      }
      if (number(place, 'speed') === 0) return place.say('At rest nothing moves. Set a speed.');
      showButtons(place, true);
      place.say(`Slowed ${SLOWED} times.`);
      start();
    },
    stop: () => {
      stop();
      showButtons(place, false);
      place.say('Stopped. The dot can be dragged.');
    },
  };
};

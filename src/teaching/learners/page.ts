/** The box on the teachers' first page comes alive: links to plans, sheets and scores carry the number of learners. */
import { effect, signal } from '@preact/signals-core';
import { h, render } from 'preact';
import { announceLive } from '../../live/announce.ts';
import { CLASS_LIMITS, learnersIn } from '../kit/class-size.ts';
import { withPart } from '../kit/link-parts.ts';
import { wholeIn } from '../kit/whole.ts';
import { LearnersBox } from './Box.tsx';
import { carry } from './carry.ts';

/** Starts the box; a page without its place stays the page that was built. */
export function startLearners(page: Document): void {
  const place = page.querySelector<HTMLElement>('[data-learners-box]');
  if (!place) return;
  const handouts = Number(place.dataset['handouts']);
  const text = signal(String(learnersIn(location.hash)));
  const type = (typed: string) => {
    text.value = typed;
    const read = wholeIn(typed, CLASS_LIMITS);
    if (read.ok)
      history.replaceState(null, '', `#${withPart(location.hash, 'learners', `${read.value}`)}`);
  };
  place.replaceChildren();
  effect(() => {
    const read = wholeIn(text.value, CLASS_LIMITS);
    render(h(LearnersBox, { text: text.value, read, handouts, type }), place);
    if (read.ok) carry(page, read.value);
  });
  announceLive();
}

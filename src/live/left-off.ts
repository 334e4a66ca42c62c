/** The home page tells where the reader left off, marks the lessons that were opened, and forgets both when told to. */
import { forgetPlace, keptPlace } from './kept-place.ts';

const lineOf = (lesson: string) => document.querySelector<HTMLElement>(`[data-lesson="${lesson}"]`);

function markOpened(isOpened: (lesson: string) => boolean): void {
  for (const line of document.querySelectorAll<HTMLElement>('[data-lesson]')) {
    const mark = line.querySelector<HTMLElement>('[data-opened]');
    if (mark) mark.hidden = !isOpened(line.dataset['lesson'] ?? '');
  }
}

/** Fills the line, or takes its room away where there is nothing to tell. */
export function tellLeftOff(): void {
  const place = keptPlace();
  const lesson = lineOf(place?.last ?? '');
  const there = lesson?.querySelector('a');
  const room = document.querySelector<HTMLElement>('.left-off');
  const told = room?.querySelector<HTMLElement>('[data-told]');
  const name = told?.querySelector('[data-lesson-name]');
  const goOn = told?.querySelector<HTMLAnchorElement>('[data-go-on]');
  if (!place || !there || !room || !told || !name || !goOn) {
    delete document.documentElement.dataset['leftOff'];
    return;
  }
  name.textContent = `lesson ${lesson?.dataset['numeral']}, ${there.textContent}`;
  goOn.href = place.heading ? `${there.href}#${place.heading}` : there.href;
  told.hidden = false;
  markOpened((each) => place.opened.includes(each));
  told.querySelector('[data-forget]')?.addEventListener('click', () => {
    forgetPlace();
    markOpened(() => false);
    room.textContent = 'Forgotten. This browser no longer knows which lessons you opened.';
    room.focus();
  });
}

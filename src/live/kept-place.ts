/**
 * Which lessons the reader has opened, and where the last one was left: kept in this browser alone, and forgettable.
 * A browser that keeps nothing, or keeps something else under that name, has simply no place to tell.
 */

const KEY = 'lessons'; // before-paint.js asks for it too
const NAME = /^[a-z][a-z0-9-]*$/; // of a lesson or of a heading: nothing else gets into an address

/** The last lesson, the heading at which it was left (if not at its top), and all that were opened. */
export interface KeptPlace {
  readonly last: string;
  readonly heading?: string | undefined;
  readonly opened: readonly string[];
}

const isName = (value: unknown): value is string => typeof value === 'string' && NAME.test(value);

/** What is kept, as far as it can be used. */
export function keptPlace(): KeptPlace | undefined {
  try {
    const { last, heading, opened } = JSON.parse(localStorage.getItem(KEY) ?? '{}');
    if (!isName(last) || !Array.isArray(opened)) return undefined;
    return { last, heading: isName(heading) ? heading : undefined, opened: opened.filter(isName) };
  } catch {
    return undefined;
  }
}

function keep(place: KeptPlace): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(place));
  } catch {
    // Nothing is kept then, and nothing is told.
  }
}

/** Forgets all of it. */
export function forgetPlace(): void {
  try {
    localStorage.removeItem(KEY);
  } catch {
    // What cannot be reached was not kept by this page either.
  }
}

/** The last heading of the second rank that the reader has come to; none above the second one. */
function headingInView(): string | undefined {
  const passed = [...document.querySelectorAll<HTMLElement>('.prose > h2[id]')].filter(
    (heading) => heading.getBoundingClientRect().top < innerHeight / 2,
  );
  return scrollY > 0 ? passed.at(-1)?.id : undefined;
}

/** Keeps a lesson as the last one opened, and on leaving the heading at which it is left; a worked example is no lesson. */
export function keepPlace(lesson: string): void {
  if (document.querySelector('[data-start]')) return;
  const opened = [...new Set([...(keptPlace()?.opened ?? []), lesson])];
  keep({ last: lesson, opened });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden')
      keep({ last: lesson, heading: headingInView(), opened });
  });
}

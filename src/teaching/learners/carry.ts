/**
 * The number of learners goes along from page to page of the pack, and to the problem sheets, each by the name that the
 * page has for it.
 * Units: counts.
 */
import { statedLearners } from '../kit/class-size.ts';
import { withPart } from '../kit/link-parts.ts';
import { counted } from '../kit/whole.ts';

const NAMES = [
  { at: /\/teach\/(plans\/.*|before-and-after\/)?$/, name: 'learners', start: '' },
  { at: /\/teach\/sheets\/$/, name: 'variants', start: 'v=1' },
] as const;

/** Sets the number in each link to a page that has a use for it, and in the words that tell it. */
export function carry(page: Document, learners: number): void {
  for (const link of page.querySelectorAll<HTMLAnchorElement>('a[href]')) {
    const part = NAMES.find(({ at }) => at.test(link.pathname));
    const isToPlace = /^#[^=]+$/.test(link.hash);
    if (!part || isToPlace || link.origin !== location.origin) continue;
    link.hash = withPart(link.hash || part.start, part.name, String(learners));
    const told = link.querySelector('[data-told]');
    if (told) told.textContent = counted(learners, 'learner');
  }
}

/** Takes along the number that the address holds, if it holds one. */
export function carryLinked(page: Document): void {
  const take = () => {
    const learners = statedLearners(location.hash);
    if (learners !== undefined) carry(page, learners);
  };
  addEventListener('hashchange', take);
  take();
}

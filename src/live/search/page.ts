/**
 * The page of search: what is typed is looked up on the device, and stays in the fragment of the address, which no
 * browser sends. Library and index come with the first touch of the box.
 */
import type MiniSearch from 'minisearch';
import { announceLive } from '../announce.ts';
import { setText } from '../elements/value.ts';
import { type FetchedLater, fetchedLater, NOT_ARRIVED } from '../fetched-later.ts';
import type { Findable, Found } from './options.ts';

const MOST = 12; // things shown
const LONGEST = 200; // letters of a question that are looked at

type Index = MiniSearch<Findable>;

function indexAt(address: string): FetchedLater<Index> {
  return fetchedLater(async () => {
    const [{ default: Library }, { SEARCH }, response] = await Promise.all([
      import('minisearch'),
      import('./options.ts'),
      fetch(address),
    ]);
    return Library.loadJSON<Findable>(await response.text(), SEARCH);
  });
}

/** The question in the address, `#q=…`; empty where there is none. */
export const questionIn = (hash: string): string =>
  (new URLSearchParams(hash.replace(/^#/, '')).get('q') ?? '').slice(0, LONGEST);

function line(page: Document, base: string, { title, says, kind, to }: Found): HTMLLIElement {
  const item = page.createElement('li');
  const way = Object.assign(page.createElement('a'), {
    href: base + to.slice(1),
    textContent: title,
  });
  const label = Object.assign(page.createElement('span'), {
    className: 'label',
    textContent: ` ${kind}`,
  });
  item.append(way, label, Object.assign(page.createElement('p'), { textContent: says }));
  return item;
}

const countOf = (count: number, question: string): string =>
  count === 0 ? `Nothing found for “${question}”. Try fewer or other words.` : `${count} found`;

/** Binds the box, the list and the address. */
export function bindSearch(page: Document): void {
  const place = page.querySelector<HTMLElement>('[data-search]');
  const box = page.querySelector<HTMLInputElement>('#search');
  const list = page.querySelector('[data-found]');
  const said = page.querySelector('[data-said]');
  const asked = page.querySelector<HTMLElement>('[data-asked]');
  if (!place || !box || !list || !said || !asked) return;
  const base = page.body.dataset['base'] ?? '/';
  const index = indexAt(place.dataset['search'] ?? '');

  const show = (question: string, found: readonly Found[]) => {
    list.replaceChildren(...found.map((each) => line(page, base, each)));
    setText(said, question === '' ? '' : countOf(found.length, question));
    asked.hidden = question !== '';
  };
  const look = () => {
    const question = box.value.trim().slice(0, LONGEST);
    const query = new URLSearchParams({ q: question });
    history.replaceState(null, '', question === '' ? location.pathname : `#${query}`);
    index.use(
      (it) => show(question, it.search(question).slice(0, MOST) as unknown as readonly Found[]),
      () => setText(said, NOT_ARRIVED),
    );
  };
  box.addEventListener('input', look);
  box.addEventListener('focus', () => void index.fetch().catch(() => {}));
  box.form?.addEventListener('submit', (event) => event.preventDefault());
  const follow = () => {
    const question = questionIn(location.hash);
    if (question === box.value.trim() || (question === '' && box.value === '')) return;
    box.value = question;
    look();
  };
  addEventListener('hashchange', follow);
  if (box.value === '') follow();
  else look(); // typed before the script was there
  announceLive();
}

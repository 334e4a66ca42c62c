/** The script of a lesson page and of a worked example: the store first, then the elements that bind to it. */
import { announceLive } from './announce.ts';
import { bringToLife } from './bring-to-life.ts';
import { startPage } from './page.ts';
import type { PageStore } from './store.ts';

async function live(store: PageStore | undefined): Promise<void> {
  if (store) {
    await bringToLife(store);
    const { name } = store.model;
    const keep = () => import('./kept-place.ts').then(({ keepPlace }) => keepPlace(name));
    addEventListener('scroll', () => void keep(), { once: true }); // opened, once the reader goes on in it
  }
  announceLive();
}

void startPage().then(live);

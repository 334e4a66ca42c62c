// @vitest-environment jsdom
/** A page that goes: it asks only while there is work that the browser refuses to keep. */
import { beforeEach, describe, expect, it } from 'vitest';
import { Shelf } from '../../../src/worksheet/io/shelf.ts';
import { bindLeaving } from '../../../src/worksheet/keeping/leaving.ts';
import { freshBrowser, openTab, refusing } from '../io/tabs.ts';

beforeEach(freshBrowser);

/** Whether the page would ask before it goes. */
function asksBeforeGoing(): boolean {
  const event = new Event('beforeunload', { cancelable: true });
  dispatchEvent(event);
  return event.defaultPrevented;
}

describe('leaving the page', () => {
  it('asks while a sheet is refused, and no longer once it is kept', async () => {
    const { database, relent } = refusing();
    const tab = await openTab(new Shelf(database));
    bindLeaving(tab.store.keeper, document);
    expect(asksBeforeGoing()).toBe(false);
    tab.type('label', 'Mill');
    await tab.written();
    expect(asksBeforeGoing()).toBe(true);
    relent();
    await tab.written();
    expect(asksBeforeGoing()).toBe(false);
  });

  it('writes what is still to be written', async () => {
    const tab = await openTab();
    bindLeaving(tab.store.keeper, document);
    tab.type('label', 'Mill');
    tab.type('label', 'Mill in the valley');
    dispatchEvent(new Event('pagehide'));
    await tab.written();
    const next = await openTab();
    expect(next.at('label')).toBe('Mill in the valley');
  });
});

/** The store of the page: what is kept when, and sheets put on the table and taken off. */
import { beforeEach, describe, expect, it } from 'vitest';
import { documentOf } from '../../../src/form/document.ts';
import { typedFrom } from '../../../src/form/typed.ts';
import { bareUnits } from '../../../src/form/units.ts';
import { openId, Shelf } from '../../../src/worksheet/io/shelf.ts';
import { backupOf, takeBackup } from '../../../src/worksheet/keeping/backup.ts';
import { putUnwrittenAside } from '../../../src/worksheet/keeping/leaving.ts';
import {
  addSheet,
  forget,
  newSheet,
  openSheet,
  putBack,
  removeOpen,
  run,
  settle,
  step,
} from '../../../src/worksheet/state/store.ts';
import { wayOf } from '../../../src/worksheet/state/undo.ts';
import { freshBrowser, openTab, refusing } from '../io/tabs.ts';

const mill = (label: string) =>
  documentOf(typedFrom(Object.entries({ label, 'band.bodyWidth': '29' })), bareUnits('metric'));

beforeEach(freshBrowser);

async function opened(shelf = new Shelf()) {
  const tab = await openTab(shelf);
  const thickness = () => tab.at('band.thickness');
  const kept = async () => (await new Shelf().records()).map(({ document }) => document);
  return { ...tab, type: (text: string) => tab.type('band.thickness', text), thickness, kept };
}

describe('keeping', () => {
  it('begins with the first key, and has every one of them', async () => {
    const { store, type, written, kept } = await opened();
    expect(await kept()).toEqual([]);
    for (const text of ['1', '1.', '1.1']) {
      type(text);
      await written();
      expect(await kept()).toMatchObject([{ typed: { 'band.thickness': text } }]);
    }
    expect(openId()).toBe(store.id.value);
    expect(store.keeper.savedAt.value.get(store.id.value)).toBeGreaterThan(0);
  });

  it('follows undo back to an empty sheet', async () => {
    const { store, type, written, kept } = await opened();
    type('1');
    expect(step(store, 'undo')).toMatchObject({ do: 'type', path: 'band.thickness' });
    await written();
    expect(await kept()).toMatchObject([{ typed: {} }]);
    expect(step(store, 'undo')).toBeUndefined();
  });

  it('leaves a sheet that is only looked at as it lies', async () => {
    await new Shelf().keep({ id: 'a', over: () => mill('M'), isFirst: false });
    const { store, written } = await opened();
    const [before] = await store.shelf.records();
    run(store, { do: 'units', system: 'us' });
    await written();
    expect(await store.shelf.records()).toEqual([before]);
  });

  it('that fails is told as long as it does, of that sheet, and nothing is lost', async () => {
    const { database, relent } = refusing();
    const { store, type, thickness, written, kept } = await opened(new Shelf(database));
    type('1');
    await written();
    const { value: id } = store.id;
    expect([...store.keeper.refused.value]).toEqual([id]);
    newSheet(store);
    expect(thickness()).toBe('');
    type('2');
    await written();
    expect(store.keeper.refused.value.size).toBe(2);
    openSheet(store, id);
    expect(thickness()).toBe('1');
    relent();
    await written();
    expect(store.keeper.refused.value.size).toBe(0);
    expect(await kept()).toHaveLength(2);
  });
});

describe('a page that goes', () => {
  it('puts aside what is not written yet, and the next one takes it in', async () => {
    const { store, type, written } = await opened();
    type('1');
    await written();
    type('1.2');
    putUnwrittenAside(store.keeper);
    const next = await opened();
    expect(next.thickness()).toBe('1.2');
    await next.written();
    expect(await next.kept()).toMatchObject([{ typed: { 'band.thickness': '1.2' } }]);
  });

  it('does not undo what another tab has written', async () => {
    const a = await opened();
    a.type('1');
    await a.written();
    const b = await opened();
    a.type('1.2');
    putUnwrittenAside(a.store.keeper);
    run(b.store, { do: 'type', path: 'band.bodyWidth', text: '29' });
    await b.written();
    const next = await opened();
    await next.written();
    expect([next.thickness(), next.at('band.bodyWidth')]).toEqual(['1.2', '29']);
  });
});

describe('sheets', () => {
  it('that say the same already, in whatever units, are only opened', async () => {
    const { store, written, kept } = await opened();
    addSheet(store, mill('M'));
    const { value: id } = store.id;
    addSheet(store, mill('N'));
    run(store, { do: 'units', system: 'us' });
    addSheet(store, mill('M'));
    expect(store.id.value).toBe(id);
    await written();
    expect(await kept()).toHaveLength(2);
    expect(store.kept.value.map(({ label }) => label)).toEqual(['M', 'N']);
  });

  it('that are opened begin a history of their own', async () => {
    const { store, type, thickness } = await opened();
    type('1');
    addSheet(store, mill('M'));
    expect(step(store, 'undo')).toBeUndefined();
    type('2');
    settle(store);
    type('3');
    step(store, 'undo');
    expect(thickness()).toBe('2');
    step(store, 'redo');
    expect(thickness()).toBe('3');
  });

  it('that are thrown away can be put back, after a reload too', async () => {
    const { store, type, thickness, written } = await opened();
    type('1');
    const { value: id } = store.id;
    removeOpen(store, Date.now());
    expect([store.kept.value, thickness()]).toEqual([[], '']);
    await written();
    const next = await opened();
    expect([next.store.kept.value, next.store.bin.value.length]).toEqual([[], 1]);
    putBack(next.store, id);
    expect([next.thickness(), next.store.bin.value]).toEqual(['1', []]);
    await next.written();
    expect((await opened()).thickness()).toBe('1');
  });

  it('in the bin can be thrown away for good', async () => {
    const { store, type, written } = await opened();
    type('1');
    const { value: id } = store.id;
    removeOpen(store, Date.now());
    await written();
    await forget(store, id);
    expect([store.bin.value, await store.shelf.records()]).toEqual([[], []]);
  });

  it('that nobody has typed on leave nothing in the bin', async () => {
    const { store } = await opened();
    removeOpen(store, Date.now());
    expect(store.bin.value).toEqual([]);
  });

  it('that do not exist are not opened', async () => {
    const { store, type, thickness } = await opened();
    type('1');
    openSheet(store, 'gone');
    putBack(store, 'gone');
    expect(thickness()).toBe('1');
  });
});

describe('a backup', () => {
  it('adds, brings up to date, keeps what is older, and replaces nothing', async () => {
    const { store, type, written } = await opened();
    addSheet(store, mill('M'));
    await written();
    const backup = backupOf(store);
    const { value: id } = store.id;
    expect(await takeBackup(store, backup)).toMatchObject({ same: 1, added: 0 });
    type('1');
    await written();
    expect(await takeBackup(store, backup)).toMatchObject({ older: 1 });
    expect(await store.shelf.versions(id)).not.toEqual([]);
    const later = backup.map((each) => ({ ...each, savedAt: Date.now() + 1000 }));
    expect(await takeBackup(store, [...later, { id: 'x' }, 7])).toMatchObject({
      newer: 1,
      unread: 2,
    });
    expect(store.project.value.typed['band.thickness']).toBeUndefined();
    freshBrowser();
    const other = await opened();
    expect(await takeBackup(other.store, backup)).toMatchObject({ added: 1 });
    await other.written();
    expect(await other.kept()).toMatchObject([{ typed: { label: 'M' } }]);
  });
});

describe('keys', () => {
  const none = { ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };

  it.each([
    [{ key: 'z', ctrlKey: true }, 'undo'],
    [{ key: 'z', metaKey: true }, 'undo'],
    [{ key: 'Z', ctrlKey: true, shiftKey: true }, 'redo'],
    [{ key: 'y', ctrlKey: true }, 'redo'],
    [{ key: 'y', metaKey: true }, undefined],
    [{ key: 'z', ctrlKey: true, altKey: true }, undefined],
    [{ key: 'z' }, undefined],
    [{ key: 'a', ctrlKey: true }, undefined],
  ])('%j is %s', (pressed, way) => expect(wayOf({ ...none, ...pressed })).toBe(way));
});

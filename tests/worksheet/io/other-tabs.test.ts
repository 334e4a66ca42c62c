/** Two tabs on one shelf: what is typed in both is on the sheet in both, box by box, and nothing is lost. */
import { beforeEach, describe, expect, it } from 'vitest';
import { takeRecord } from '../../../src/worksheet/io/other-tabs.ts';
import { removeOpen, step } from '../../../src/worksheet/state/store.ts';
import { NOTICES } from '../../../src/worksheet/words/notices.ts';
import { freshBrowser, openTab } from './tabs.ts';

beforeEach(freshBrowser);

/** One sheet, open in two tabs. */
async function twoTabs() {
  const a = await openTab();
  a.type('label', 'Mill');
  await a.written();
  return { a, b: await openTab() };
}

describe('a sheet that another tab has changed', () => {
  it('follows, box by box, and says so', async () => {
    const { a, b } = await twoTabs();
    b.type('band.bodyWidth', '29');
    await b.written();
    expect(b.told).toEqual([a.store.id.value]);
    await a.hear();
    expect(a.at('band.bodyWidth')).toBe('29');
    expect(a.said.value).toBe(NOTICES.followed);
  });

  it('keeps what was typed in both, whoever writes first', async () => {
    const { a, b } = await twoTabs();
    a.type('band.bodyWidth', '30');
    b.type('band.thickness', '1.1');
    await a.written();
    await b.written();
    await a.hear();
    for (const tab of [a, b])
      expect([tab.at('band.bodyWidth'), tab.at('band.thickness')]).toEqual(['30', '1.1']);
    expect(a.store.kept.value).toHaveLength(1);
  });

  it('in the same box shows the same in both: what was written last', async () => {
    const { a, b } = await twoTabs();
    a.type('band.bodyWidth', '3');
    await a.written();
    b.type('band.bodyWidth', '29');
    await b.written();
    await a.hear();
    expect([a.at('band.bodyWidth'), b.at('band.bodyWidth')]).toEqual(['29', '29']);
  });

  it('leaves a box alone that is being typed into here', async () => {
    const { a, b } = await twoTabs();
    b.type('band.bodyWidth', '29');
    await b.written();
    const record = await b.store.shelf.record(b.store.id.value);
    a.type('band.bodyWidth', '3');
    if (record) takeRecord(a.store, a.said, record);
    expect(a.at('band.bodyWidth')).toBe('3');
  });

  it('is not taken back by undo here', async () => {
    const { a, b } = await twoTabs();
    a.type('band.thickness', '1');
    b.type('band.bodyWidth', '29');
    await b.written();
    await a.hear();
    step(a.store, 'undo');
    expect([a.at('band.bodyWidth'), a.at('band.thickness'), a.at('label')]).toEqual([
      '29',
      '',
      'Mill',
    ]);
  });

  it('follows what was cleared there', async () => {
    const { a, b } = await twoTabs();
    b.type('label', '');
    await b.written();
    await a.hear();
    expect(a.at('label')).toBe('');
  });

  it('and that says the same says nothing', async () => {
    const { a } = await twoTabs();
    await a.hear();
    await a.hear('gone');
    expect(a.said.value).toBe('');
  });

  it('and is not the open one, is only listed', async () => {
    const { a, b } = await twoTabs();
    const other = await openTab();
    other.store.id.value = 'elsewhere';
    b.type('label', 'Another');
    await b.written();
    await other.hear(a.store.id.value);
    expect(other.said.value).toBe('');
    expect(other.store.kept.value).toEqual([{ id: a.store.id.value, label: 'Another' }]);
  });
});

describe('a sheet that another tab has deleted', () => {
  it('stays on the table, says so, and comes back with the next change', async () => {
    const { a, b } = await twoTabs();
    removeOpen(b.store, Date.now());
    await b.written();
    await a.hear();
    expect(a.said.value).toBe(NOTICES.removedElsewhere);
    a.type('band.thickness', '1');
    await a.written();
    expect((await openTab()).store.kept.value).toHaveLength(1);
  });

  it('goes to the bin where it is not open', async () => {
    const { b } = await twoTabs();
    const other = await openTab();
    const id = other.store.id.value;
    other.store.id.value = 'elsewhere';
    removeOpen(b.store, Date.now());
    await b.written();
    await other.hear(id);
    expect(other.store.kept.value).toEqual([]);
    expect(other.store.bin.value).toMatchObject([{ id, label: 'Mill' }]);
  });
});

/** Two tabs on one store: neither overwrites what is being typed in the other, and nothing is lost. */
import { signal } from '@preact/signals-core';
import { describe, expect, it } from 'vitest';
import { readDocument } from '../../../src/form/schema.ts';
import { typedAt } from '../../../src/form/typed.ts';
import { takeEntry } from '../../../src/worksheet/io/other-tabs.ts';
import { Shelf } from '../../../src/worksheet/io/shelf.ts';
import { createSheetStore, openSheet, run } from '../../../src/worksheet/state/store.ts';
import { NOTICES } from '../../../src/worksheet/words/notices.ts';
import { memoryStore } from './memory-store.ts';

const KEY = 'worksheet.';

/** A tab on a store, with what is on its shelf already and that sheet open. */
function openTab(memory: Storage) {
  const shelf = new Shelf(() => memory);
  const store = createSheetStore(shelf, 'metric');
  const said = signal('');
  for (const { id, value } of shelf.entries()) {
    const read = readDocument(value);
    if (typeof read !== 'string') store.documents.set(id, read.document);
  }
  openSheet(store, shelf.openId() ?? '');
  const type = (path: 'label' | 'band.bodyWidth' | 'band.thickness', text: string) =>
    run(store, { do: 'type', path, text });
  const at = (path: 'label' | 'band.bodyWidth' | 'band.thickness') =>
    typedAt(store.project.value.typed, path);
  const hear = (id: string) => takeEntry(store, said, KEY + id);
  return { store, said, type, at, hear };
}

/** A store with one sheet, open in two tabs. */
function twoTabs() {
  const memory = memoryStore();
  const first = openTab(memory);
  first.type('label', 'Mill');
  const id = first.store.id.value;
  return { memory, id, a: openTab(memory), b: openTab(memory) };
}

const widthsOn = (memory: Storage) =>
  new Shelf(() => memory)
    .entries()
    .map(({ value }) => {
      const read = readDocument(value);
      return typeof read === 'string' ? read : read.document.typed['band.bodyWidth'];
    })
    .sort();

describe('a sheet that another tab has changed', () => {
  it('follows where nothing was typed on it here, and says so', async () => {
    const { id, a, b } = twoTabs();
    b.type('band.bodyWidth', '29');
    await a.hear(id);
    expect(a.at('band.bodyWidth')).toBe('29');
    expect(a.said.value).toBe(NOTICES.followed);
    expect(a.store.id.value).toBe(id);
  });

  it('stays as it was typed here, as a sheet of its own, and both are kept', async () => {
    const { memory, id, a, b } = twoTabs();
    a.type('band.bodyWidth', '30');
    b.type('band.bodyWidth', '29');
    await a.hear(id);
    expect(a.at('band.bodyWidth')).toBe('30');
    expect(a.said.value).toBe(NOTICES.bothKept);
    expect(a.store.id.value).not.toBe(id);
    expect(widthsOn(memory)).toEqual(['29', '30']);
    expect(a.store.kept.value).toHaveLength(2);
    a.type('band.thickness', '1');
    expect(widthsOn(memory)).toEqual(['29', '30']);
    expect(b.at('band.bodyWidth')).toBe('29');
    expect(b.at('band.thickness')).toBe('');
  });

  it('to the same text says nothing', async () => {
    const { id, a, b } = twoTabs();
    a.type('band.bodyWidth', '29');
    b.type('band.bodyWidth', '29');
    await a.hear(id);
    expect([a.said.value, a.store.id.value]).toEqual(['', id]);
  });

  it('and is not the open one, is only listed', async () => {
    const { memory, id, a, b } = twoTabs();
    const other = openTab(memory);
    b.type('label', 'Another');
    other.store.id.value = 'elsewhere';
    await other.hear(id);
    expect(other.said.value).toBe('');
    expect(other.store.kept.value).toContainEqual({ id, label: 'Another' });
    expect(a.at('label')).toBe('Mill');
  });

  it('into something that cannot be read, or is no sheet, is left alone', async () => {
    const { memory, id, a } = twoTabs();
    memory.setItem(KEY + id, '{"half');
    await a.hear(id);
    await takeEntry(a.store, a.said, 'units');
    await takeEntry(a.store, a.said, null);
    expect([a.at('label'), a.said.value]).toEqual(['Mill', '']);
  });
});

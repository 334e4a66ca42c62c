/** The store of the page: what is kept when, and sheets put on the table and taken off. */
import { describe, expect, it } from 'vitest';
import { documentOf } from '../../../src/form/document.ts';
import { typedAt, typedFrom } from '../../../src/form/typed.ts';
import { bareUnits } from '../../../src/form/units.ts';
import { Shelf } from '../../../src/worksheet/io/shelf.ts';
import {
  addSheet,
  createSheetStore,
  newSheet,
  openSheet,
  removeOpen,
  run,
  settle,
  step,
} from '../../../src/worksheet/state/store.ts';
import { wayOf } from '../../../src/worksheet/state/undo.ts';
import { memoryStore } from '../io/memory-store.ts';

const mill = (label: string) =>
  documentOf(typedFrom(Object.entries({ label, 'band.bodyWidth': '29' })), bareUnits('metric'));

function opened(room?: number) {
  const shelf = new Shelf(() => memory);
  const memory = memoryStore(room);
  const store = createSheetStore(shelf, 'metric');
  const type = (text: string) => run(store, { do: 'type', path: 'band.thickness', text });
  const thickness = () => typedAt(store.project.value.typed, 'band.thickness');
  return { memory, shelf, store, type, thickness };
}

describe('keeping', () => {
  it('begins with the first key, and has every one of them', () => {
    const { shelf, store, type } = opened();
    expect(shelf.entries()).toEqual([]);
    for (const text of ['1', '1.', '1.1']) {
      type(text);
      expect(shelf.entries()).toMatchObject([{ value: { typed: { 'band.thickness': text } } }]);
    }
    expect(shelf.openId()).toBe(store.id.value);
  });

  it('follows undo back to an empty sheet', () => {
    const { shelf, store, type } = opened();
    type('1');
    expect(step(store, 'undo')).toMatchObject({ do: 'type', path: 'band.thickness' });
    expect(shelf.entries()).toMatchObject([{ value: { typed: {} } }]);
    expect(step(store, 'undo')).toBeUndefined();
  });

  it('leaves a sheet that is only looked at as it lies', () => {
    const { memory, store } = opened();
    memory.setItem('worksheet.a', 'as it lies');
    store.documents.set('a', mill('M'));
    openSheet(store, 'a');
    run(store, { do: 'units', system: 'us' });
    expect(memory.getItem('worksheet.a')).toBe('as it lies');
  });

  it('that fails is told, and nothing is lost on a change of sheet', () => {
    const { store, type, thickness } = opened(0);
    type('1');
    expect(store.notKept.value).toBe(true);
    const { value: id } = store.id;
    newSheet(store);
    expect(thickness()).toBe('');
    openSheet(store, id);
    expect(thickness()).toBe('1');
  });
});

describe('sheets', () => {
  it('that are there already, to the letter, are only opened', () => {
    const { shelf, store } = opened();
    addSheet(store, mill('M'));
    const { value: id } = store.id;
    addSheet(store, mill('N'));
    addSheet(store, mill('M'));
    expect(store.id.value).toBe(id);
    expect(shelf.entries()).toHaveLength(2);
    expect(store.kept.value.map(({ label }) => label)).toEqual(['M', 'N']);
  });

  it('that are opened begin a history of their own', () => {
    const { store, type, thickness } = opened();
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

  it('that are thrown away can be put back', () => {
    const { shelf, store, type, thickness } = opened();
    type('1');
    const document = removeOpen(store);
    expect([shelf.entries(), thickness()]).toEqual([[], '']);
    addSheet(store, document);
    expect(thickness()).toBe('1');
    addSheet(store, mill('M'));
    removeOpen(store);
    expect(thickness()).toBe('1');
  });

  it('that do not exist are not opened', () => {
    const { store, type, thickness } = opened();
    type('1');
    openSheet(store, 'gone');
    expect(thickness()).toBe('1');
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

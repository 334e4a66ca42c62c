/** The open sheet once more, for another band or a neighbour's mill. */
import { beforeEach, describe, expect, it } from 'vitest';
import { documentOf } from '../../../src/form/document.ts';
import { typedFrom } from '../../../src/form/typed.ts';
import { bareUnits } from '../../../src/form/units.ts';
import { Shelf } from '../../../src/worksheet/io/shelf.ts';
import { addSheet, copyOpen, openSheet } from '../../../src/worksheet/state/store.ts';
import { freshBrowser, openTab } from '../io/tabs.ts';

const mill = (label: string) =>
  documentOf(typedFrom(Object.entries({ label, 'band.bodyWidth': '29' })), bareUnits('metric'));

beforeEach(freshBrowser);

describe('a copy', () => {
  it('is a sheet of its own with all that was typed, under a name that says so', async () => {
    const { store, type, at, written } = await openTab();
    addSheet(store, mill('M'));
    type('band.thickness', '1.1');
    const first = store.id.value;
    copyOpen(store);
    expect(store.id.value).not.toBe(first);
    expect([at('label'), at('band.bodyWidth'), at('band.thickness')]).toEqual([
      'M, a copy',
      '29',
      '1.1',
    ]);
    type('band.thickness', '1.2');
    await written();
    openSheet(store, first);
    expect([at('label'), at('band.thickness')]).toEqual(['M', '1.1']);
    expect(await new Shelf().records()).toHaveLength(2);
  });

  it('of a sheet with the longest name is named too', async () => {
    const { store, at } = await openTab();
    addSheet(store, mill('M'.repeat(80)));
    copyOpen(store);
    expect(at('label')).toBe(`${'M'.repeat(72)}, a copy`);
  });
});

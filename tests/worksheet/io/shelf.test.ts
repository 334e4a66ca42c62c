/** The browser's store: forbidden, full, or written to by others, it never throws and loses nothing. */
import { describe, expect, it } from 'vitest';
import { Shelf } from '../../../src/worksheet/io/shelf.ts';
import { memoryStore as store } from './memory-store.ts';

describe('a shelf', () => {
  it('gives back what it keeps, and leaves foreign entries alone', () => {
    const memory = store();
    memory.setItem('units', 'us');
    const shelf = new Shelf(() => memory);
    expect(shelf.keep('b', { label: 'two' })).toBe(true);
    expect(shelf.keep('a', { label: 'one' })).toBe(true);
    shelf.setOpen('b');
    expect(shelf.openId()).toBe('b');
    expect(shelf.entries()).toEqual([
      { id: 'a', value: { label: 'one' } },
      { id: 'b', value: { label: 'two' } },
    ]);
    shelf.remove('a');
    expect(shelf.entries()).toHaveLength(1);
    expect(memory.getItem('units')).toBe('us');
  });

  it('gives an entry that is no JSON as the text that it is', () => {
    const memory = store();
    memory.setItem('worksheet.x', '{"half');
    expect(new Shelf(() => memory).entries()).toEqual([{ id: 'x', value: '{"half' }]);
  });

  it('that is full says so', () => expect(new Shelf(() => store(0)).keep('a', {})).toBe(false));

  it('that is forbidden says so, and is empty', () => {
    const shelf = new Shelf(() => {
      throw new DOMException('no', 'SecurityError');
    });
    expect(shelf.keep('a', {})).toBe(false);
    expect(shelf.entries()).toEqual([]);
    expect(shelf.openId()).toBeUndefined();
    expect(() => shelf.remove('a')).not.toThrow();
  });

  it('names sheets apart, and knows its own keys', () => {
    const shelf = new Shelf(() => store());
    expect(shelf.newId()).not.toBe(shelf.newId());
    expect(shelf.idOfKey('worksheet.abc')).toBe('abc');
    expect(shelf.idOfKey('units')).toBeUndefined();
    expect(shelf.idOfKey(null)).toBeUndefined();
  });
});

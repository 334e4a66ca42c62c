/** The browser's database: what is kept comes back, with what it replaced, and nothing stays for ever. */
import { beforeEach, describe, expect, it } from 'vitest';
import { databaseOpener } from '../../../src/worksheet/io/database.ts';
import { KEPT } from '../../../src/worksheet/io/limits.ts';
import { newId, openId, Shelf, setOpen } from '../../../src/worksheet/io/shelf.ts';
import { freshBrowser } from './tabs.ts';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
let now = 0;
let shelf: Shelf;

beforeEach(() => {
  freshBrowser();
  now = 1000 * DAY;
  shelf = new Shelf(databaseOpener(), () => now);
});

const keep = (
  id: string,
  document: unknown,
  more: { removedAt?: number; isFirst?: boolean } = {},
) => shelf.keep({ id, over: () => document, isFirst: false, ...more });
const versions = async (id: string) => (await shelf.versions(id)).map(({ document }) => document);

describe('a shelf', () => {
  it('gives back what it keeps, with a stamp of its own for each change', async () => {
    const first = await keep('a', 'one');
    const second = await keep('a', 'two');
    expect(second).toMatchObject({ id: 'a', document: 'two', savedAt: now });
    expect(second.stamp).not.toBe(first.stamp);
    await keep('b', 'three');
    expect((await shelf.records()).map(({ document }) => document)).toEqual(['two', 'three']);
    expect(await shelf.record('a')).toEqual(second);
  });

  it('writes nothing where nothing has changed', async () => {
    const first = await keep('a', { label: 'one' });
    now += HOUR;
    expect(await keep('a', { label: 'one' })).toEqual(first);
  });

  it('keeps what a change makes of the record that lies there', async () => {
    await keep('a', 'one');
    const over = (stored?: { document: unknown }) => `${stored?.document} and two`;
    expect(await shelf.keep({ id: 'a', over, isFirst: false })).toMatchObject({
      document: 'one and two',
    });
  });

  it('gives names that nothing else has, and remembers which sheet is open', () => {
    expect(newId()).not.toBe(newId());
    expect(openId()).toBeUndefined();
    setOpen('a');
    expect(openId()).toBe('a');
  });

  it('rejects, and keeps working, where the browser has no database', async () => {
    const closed = new Shelf(() => Promise.reject(new DOMException('no', 'SecurityError')));
    await expect(closed.records()).rejects.toThrow('no');
    await expect(closed.keep({ id: 'a', over: () => 1, isFirst: true })).rejects.toThrow('no');
  });
});

describe('earlier versions', () => {
  it('are what stood there at the first change of a visit, and at the end of each hour', async () => {
    await keep('a', 'before');
    now += 60_000;
    await keep('a', 'first of a visit', { isFirst: true });
    await keep('a', 'same hour');
    expect(await versions('a')).toEqual(['before']);
    now += HOUR;
    await keep('a', 'next hour');
    expect(await versions('a')).toEqual(['same hour']);
    expect(await versions('b')).toEqual([]);
  });

  it('stay for each hour of a day and each day of a month', async () => {
    for (let hour = 0; hour < 45 * 24; hour += 1) {
      await keep('a', `hour ${hour}`);
      now += HOUR;
    }
    const kept = await versions('a');
    expect(kept.slice(0, 3)).toEqual([1078, 1077, 1076].map((hour) => `hour ${hour}`));
    expect(kept.length).toBeGreaterThan(KEPT.dailyVersions + KEPT.hourlyVersions - 3);
    expect(kept.length).toBeLessThanOrEqual(KEPT.dailyVersions + KEPT.hourlyVersions + 2);
  });

  it('can be put beside a sheet, and go with it', async () => {
    await keep('a', 'new');
    await shelf.addVersion({ id: 'a', savedAt: now - DAY, document: 'old' });
    expect(await versions('a')).toEqual(['old']);
    await shelf.forget('a');
    expect([await versions('a'), await shelf.records()]).toEqual([[], []]);
  });
});

describe('the bin', () => {
  it('keeps a sheet for a while, then lets it go with its versions', async () => {
    await keep('a', 'one');
    await keep('a', 'one', { removedAt: now, isFirst: true });
    now += KEPT.binDays * DAY;
    expect(await shelf.records()).toMatchObject([{ id: 'a', removedAt: now - KEPT.binDays * DAY }]);
    now += 1;
    expect(await shelf.records()).toEqual([]);
    expect(await shelf.record('a')).toBeUndefined();
    expect(await versions('a')).toEqual([]);
  });
});

// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

const PARSER = '../../src/units/reading/parse-quantity.ts';

/** What reads typed quantities, as on a page that has just been opened. */
const openedPage = () => import('../../src/live/reading.ts');

beforeEach(() => {
  vi.resetModules();
});

afterEach(() => {
  vi.doUnmock(PARSER);
});

describe('reading what is typed', () => {
  it('waits for what reads it, the first time only', async () => {
    const { withReading } = await openedPage();
    const read: number[] = [];
    const take = () =>
      withReading((parse) => {
        const found = parse('2 kN', 'force', 'metric');
        read.push(found.ok ? found.value : Number.NaN);
      }, expect.unreachable);
    take();
    expect(read).toEqual([]);
    await vi.waitFor(() => expect(read).toEqual([2000]));
    take();
    expect(read).toEqual([2000, 2000]);
  });

  it('is told where that does not arrive', async () => {
    vi.doMock(PARSER, () => {
      throw new Error('no connection');
    });
    const { withReading } = await openedPage();
    const failed = vi.fn();
    withReading(expect.unreachable, failed);
    await vi.waitFor(() => expect(failed).toHaveBeenCalledOnce());
  });

  it.each(['pointerdown', 'focusin'])('is fetched with the first %s', async (touch) => {
    const { readFromFirstTouch, withReading } = await openedPage();
    readFromFirstTouch(document);
    document.dispatchEvent(new Event(touch));
    await import(PARSER);
    await new Promise(setImmediate);
    const use = vi.fn();
    withReading(use, expect.unreachable);
    expect(use).toHaveBeenCalledOnce();
  });
});

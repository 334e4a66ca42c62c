// @vitest-environment jsdom
import { afterEach, describe, expect, it, vi } from 'vitest';

const PARSER = '../../src/units/reading/parse-quantity.ts';

let pages = 0;

/** What reads typed quantities, as on a page that has just been opened: a module of its own. */
function openedPage(): Promise<typeof import('../../src/live/reading.ts')> {
  pages += 1;
  return import(`../../src/live/reading.ts?page=${pages}`);
}

const unexpected = () => expect.unreachable();

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
      }, unexpected);
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
    withReading(unexpected, failed);
    await vi.waitFor(() => expect(failed).toHaveBeenCalledOnce());
  });

  it.each(['pointerdown', 'focusin'])('is fetched with the first %s', async (touch) => {
    const { readFromFirstTouch, withReading } = await openedPage();
    readFromFirstTouch(document);
    document.dispatchEvent(new Event(touch));
    const readsAtOnce = () => {
      const use = vi.fn();
      withReading(use, unexpected);
      return use.mock.calls.length === 1;
    };
    await vi.waitFor(() => expect(readsAtOnce()).toBe(true));
  });
});

// @vitest-environment jsdom
import { describe, expect, it, vi } from 'vitest';
import { fetchedLater, fetchWithFirstTouch } from '../../src/live/fetched-later.ts';

const unexpected = () => expect.unreachable();

describe('what is fetched later', () => {
  it('is waited for the first time only, and fetched once', async () => {
    const load = vi.fn(async () => 2000);
    const { use } = fetchedLater(load);
    const seen: number[] = [];
    const look = () => use((it) => seen.push(it), unexpected);
    look();
    expect(seen).toEqual([]);
    await vi.waitFor(() => expect(seen).toEqual([2000]));
    look();
    expect(seen).toEqual([2000, 2000]);
    expect(load).toHaveBeenCalledOnce();
  });

  it('is fetched once, however often it is wanted while it is on its way', async () => {
    const load = vi.fn(async () => 2000);
    const { use } = fetchedLater(load);
    const seen: number[] = [];
    for (let press = 0; press < 3; press += 1) use((it) => seen.push(it), unexpected);
    await vi.waitFor(() => expect(seen).toEqual([2000, 2000, 2000]));
    expect(load).toHaveBeenCalledOnce();
  });

  it('is told where it does not arrive, and asked for again', async () => {
    const load = vi.fn(async () => 2000).mockRejectedValueOnce(new Error('no connection'));
    const { use } = fetchedLater(load);
    const failed = vi.fn();
    use(unexpected, failed);
    await vi.waitFor(() => expect(failed).toHaveBeenCalledOnce());
    const act = vi.fn();
    use(act, unexpected);
    await vi.waitFor(() => expect(act).toHaveBeenCalledWith(2000));
  });

  it.each(['pointermove', 'pointerdown', 'focusin'])('comes with the first %s', async (touch) => {
    const load = vi.fn(async () => 2000);
    fetchWithFirstTouch(document, fetchedLater(load));
    expect(load).not.toHaveBeenCalled();
    document.dispatchEvent(new Event(touch));
    document.dispatchEvent(new Event(touch));
    await vi.waitFor(() => expect(load).toHaveBeenCalledOnce());
  });
});

/** When the sheet is drawn: with the results that a key brings, or at once. */
import { signal } from '@preact/signals-core';
import { options } from 'preact';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { drawTogether } from '../../../src/worksheet/state/drawing.ts';
import type { Command } from '../../../src/worksheet/state/project.ts';

const typing: Command = { do: 'type', path: 'band.thickness', text: '1.1' };
const choosing: Command = { do: 'choose', path: 'tensioner.kind', text: 'hydraulic' };
const soon = () => Promise.resolve();

/** A sheet whose commands leave the results behind or not, and how often it was drawn. */
async function sheet() {
  const [isBehind, page] = [signal(false), new EventTarget()];
  let drawings = 0;
  const run = drawTogether(page as Document, isBehind, () => {
    isBehind.value = true;
    options.debounceRendering?.(() => {
      drawings += 1;
    });
  });
  await soon();
  return { isBehind, page, run, drawings: () => drawings };
}

const { debounceRendering } = options;
beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }));
afterEach(() => {
  vi.useRealTimers();
  if (debounceRendering) options.debounceRendering = debounceRendering;
  else delete options.debounceRendering;
});

describe('what is typed', () => {
  it('is drawn once, with the results that it brings', async () => {
    const { isBehind, run, drawings } = await sheet();
    run(typing);
    await soon();
    expect(drawings()).toBe(0);
    isBehind.value = false;
    await soon();
    expect(drawings()).toBe(1);
    vi.advanceTimersByTime(1000);
    expect(drawings()).toBe(1);
  });

  it('does not wait for late results', async () => {
    const { run, drawings } = await sheet();
    run(typing);
    vi.advanceTimersByTime(99);
    await soon();
    expect(drawings()).toBe(0);
    vi.advanceTimersByTime(1);
    expect(drawings()).toBe(1);
  });

  it.each([
    ['a box that is left', new Event('focusout')],
    ['a press', new Event('click')],
    ['a key that goes somewhere', Object.assign(new Event('keydown'), { key: 'Enter' })],
    ['a command by key', Object.assign(new Event('keydown'), { key: 'z', ctrlKey: true })],
  ])('is drawn before %s', async (_, event) => {
    const { page, run, drawings } = await sheet();
    run(typing);
    page.dispatchEvent(event);
    expect(drawings()).toBe(1);
  });

  it('waits on while the next letter is typed', async () => {
    const { page, run, drawings } = await sheet();
    run(typing);
    page.dispatchEvent(Object.assign(new Event('keydown'), { key: '2' }));
    expect(drawings()).toBe(0);
  });
});

it('what is chosen is drawn at once', async () => {
  const { run, drawings } = await sheet();
  run(choosing);
  await soon();
  expect(drawings()).toBe(1);
});

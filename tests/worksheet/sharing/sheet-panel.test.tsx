// @vitest-environment jsdom
import { h, render } from 'preact';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import * as saving from '../../../src/live/sharing/save-picture.ts';
import { madeOnce, sheetPanel } from '../../../src/worksheet/sharing/sheet-panel.tsx';

const LINK = 'https://a.test/worksheet/#v=2&w=abc';
const CHART = `
  <figure><figcaption id="chart-finding">At 15 N·m the stress is 107 MPa.</figcaption>
  <div class="stress-chart"><svg></svg></div><p class="chart-key">Dots: measured.</p></figure>`;

const written = vi.fn<(text: string) => Promise<void>>();

/** The panel of a sheet on a page, as text, with its buttons to press. */
function open(link: () => Promise<string | undefined>, chart = '') {
  document.body.innerHTML = `<input id="box-label" value="Ottersleigh">${chart}<div id="place"></div>`;
  const place = document.querySelector('#place') as HTMLElement;
  render(
    h(
      sheetPanel(link, () => 1, document),
      {},
    ),
    place,
  );
  const buttons = () => [...place.querySelectorAll('button')];
  return {
    place,
    names: () => buttons().map(({ textContent }) => textContent),
    press: (name: string) =>
      buttons()
        .find(({ textContent }) => textContent === name)
        ?.click(),
    says: () => place.querySelector('[role="status"]')?.textContent,
  };
}

beforeEach(() => {
  written.mockResolvedValue();
  const clipboard = { writeText: written };
  Object.defineProperty(navigator, 'clipboard', { value: clipboard, configurable: true });
});
afterEach(() => {
  written.mockReset();
  Reflect.deleteProperty(navigator, 'clipboard');
  Reflect.deleteProperty(navigator, 'share');
  vi.restoreAllMocks();
});

describe('the panel of a sheet', () => {
  it('copies its link, and says that the whole sheet is in it', async () => {
    const { press, says } = open(async () => LINK);
    press('Copy link');
    await vi.waitFor(() => expect(says()).toMatch(/^The link is copied\. The whole sheet/));
    expect(written).toHaveBeenCalledExactlyOnceWith(LINK);
  });

  it('draws the link as a code, unless a code cannot hold it', async () => {
    const { press, place } = open(async () => LINK);
    press('Code for a camera');
    await vi.waitFor(() => expect(place.querySelector('.matrix-code path')).not.toBeNull());
    const long = open(async () => `${LINK}${'x'.repeat(3000)}`);
    long.press('Code for a camera');
    await vi.waitFor(() => expect(long.says()).toMatch(/too long for a code\. Copy the link/));
  });

  it.each(['Copy link', 'Code for a camera', 'Send'])(
    'offers a file where the sheet is too long for a link: %s',
    async (name) => {
      const share = vi.fn();
      Object.defineProperty(navigator, 'share', { value: share, configurable: true });
      const { press, says } = open(async () => undefined);
      press(name);
      await vi.waitFor(() => expect(says()).toMatch(/too long for a link.*Save a file/));
      expect(written).not.toHaveBeenCalled();
      expect(share).not.toHaveBeenCalled();
    },
  );

  it('sends name, finding and link where the phone can send', async () => {
    expect(open(async () => LINK).names()).not.toContain('Send');
    const share = vi.fn(async () => {});
    Object.defineProperty(navigator, 'share', { value: share, configurable: true });
    open(async () => LINK, CHART).press('Send');
    const text = 'At 15 N·m the stress is 107 MPa.';
    await vi.waitFor(() =>
      expect(share).toHaveBeenCalledExactlyOnceWith({ title: 'Ottersleigh', text, url: LINK }),
    );
  });

  it('saves the chart with its finding, its key and where it is from, once there is one', async () => {
    const picture = ['Picture, PNG', 'Picture, SVG'];
    expect(open(async () => LINK).names()).not.toContain(picture[0]);
    const save = vi.spyOn(saving, 'savePicture').mockResolvedValue();
    const { press, names, says } = open(async () => LINK, CHART);
    expect(names()).toEqual(expect.arrayContaining(picture));
    press('Picture, SVG');
    await vi.waitFor(() => expect(says()).toMatch(/among your downloads/));
    expect(save).toHaveBeenCalledExactlyOnceWith('chart', 'svg', {
      svg: document.querySelector('svg'),
      finding: 'At 15 N·m the stress is 107 MPa.',
      notes: ['Ottersleigh', 'Dots: measured.'],
      address: location.origin + location.pathname,
    });
  });

  it('has nothing for other people’s pages: a sheet is one’s own', () =>
    expect(open(async () => LINK).names()).not.toContain('Code for a web page'));

  it('says so where the link cannot be made, and tries again with the next press', async () => {
    const link = vi.fn(async () => LINK);
    link.mockRejectedValueOnce(new TypeError('offline'));
    const { press, says } = open(link);
    press('Copy link');
    await vi.waitFor(() => expect(says()).toMatch(/did not arrive/));
    press('Copy link');
    await vi.waitFor(() => expect(says()).toMatch(/^The link is copied/));
  });
});

describe('a link made once', () => {
  it('is made anew when the sheet has changed', async () => {
    let sheet = 1;
    const link = vi.fn(async () => `link ${sheet}`);
    const ready = madeOnce(link, () => sheet);
    expect([await ready(), await ready()]).toEqual(['link 1', 'link 1']);
    sheet = 2;
    expect(await ready()).toBe('link 2');
    expect(link).toHaveBeenCalledTimes(2);
  });
});

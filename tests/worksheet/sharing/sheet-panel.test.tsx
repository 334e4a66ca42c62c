// @vitest-environment jsdom
import { signal } from '@preact/signals-core';
import { h, render } from 'preact';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { readDocument } from '../../../src/form/schema.ts';
import * as saving from '../../../src/live/sharing/save-picture.ts';
import { madeOnce, sharedSheet, sheetPanel } from '../../../src/worksheet/sharing/sheet-panel.tsx';
import { answerTo } from '../../../src/worksheet/state/answers.ts';
import { apply, emptyProject } from '../../../src/worksheet/state/project.ts';
import { reckon } from '../../../src/worksheet/state/results.ts';
import { type SheetView, viewOf } from '../../../src/worksheet/state/view.ts';
import exampleA from '../../form/fixtures/version-1/example-a.json' with { type: 'json' };

const LINK = 'https://a.test/worksheet/#v=2&w=abc';

const written = vi.fn<(text: string) => Promise<void>>();

/** An invented mill with readings, or an empty sheet, whose worker answers at once. */
function viewOn(document?: unknown): SheetView {
  const read = document === undefined ? 'blank' : readDocument(document);
  const empty = emptyProject('metric');
  const filled =
    typeof read === 'string' ? empty : apply(empty, { do: 'load', document: read.document });
  const project = signal(filled);
  const reckoning = reckon(project, (answered) => ({
    ask: (question) => answered(answerTo(question)),
    end: () => {},
  }));
  return viewOf({ project, reckoning });
}

/** The panel of a sheet on a page, with its buttons to press. */
function open(link: () => Promise<string | undefined>, sheet?: unknown) {
  document.body.innerHTML = '<div id="place"></div>';
  const place = document.querySelector('#place') as HTMLElement;
  const view = viewOn(sheet);
  render(
    h(
      sheetPanel({ link, view, page: document }, () => 1),
      {},
    ),
    place,
  );
  const buttons = () => [...place.querySelectorAll('button')];
  return {
    place,
    finding: sharedSheet({ link, view, page: document }).finding(),
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
    const { press, finding } = open(async () => LINK, exampleA);
    press('Send');
    expect(finding).toMatch(/^By the dial the band carries /);
    const { label: title } = exampleA;
    await vi.waitFor(() =>
      expect(share).toHaveBeenCalledExactlyOnceWith({ title, text: finding, url: LINK }),
    );
  });

  it('saves the chart with its finding, its key and where it is from, once there is one', async () => {
    const picture = ['Picture, PNG', 'Picture, SVG'];
    expect(open(async () => LINK).names()).not.toContain(picture[0]);
    const save = vi.spyOn(saving, 'savePicture').mockResolvedValue();
    const { press, names, says, finding } = open(async () => LINK, exampleA);
    expect(names()).toEqual(expect.arrayContaining(picture));
    press('Picture, SVG');
    await vi.waitFor(() => expect(says()).toMatch(/among your downloads/));
    const [[name, kind, parts] = []] = save.mock.calls;
    expect([save.mock.calls.length, kind]).toEqual([1, 'svg']);
    expect(name).toMatch(/^mill-a-ottersleigh-\d+-[a-z]+-\d{4}-chart$/);
    expect(parts).toMatchObject({ finding, address: location.origin + location.pathname });
    expect(parts?.notes).toEqual([exampleA.label, expect.stringMatching(/^Shaded: predicted/)]);
    const readings = parts?.svg.querySelector('[data-part="line"]')?.getAttribute('d') ?? '';
    expect(readings.match(/M/g)?.length).toBeGreaterThan(5);
    expect(document.body.children.length, 'nothing is left of the drawing').toBe(1);
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

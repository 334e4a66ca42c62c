/** What a reader can share of the open sheet: the same panel as under a figure. Fetched with the first touch. */
import type { ComponentType } from 'preact';
import { Panel } from '../../live/sharing/Panel.tsx';
import { savePicture } from '../../live/sharing/save-picture.ts';
import type { PictureKind, Shareable } from '../../live/sharing/shareable.ts';

/** The link of the open sheet; undefined where it is too long. */
type Link = () => Promise<string | undefined>;

const WORDS = {
  copied: 'The link is copied. The whole sheet is in it; nothing is sent anywhere.',
  coded: 'A phone’s camera opens this sheet, with all that is in it.',
} as const;

const textIn = (page: Document, selector: string): string =>
  page.querySelector(selector)?.textContent?.trim() ?? '';

/** The sheet as it now is; its picture is that of its chart, once there is one. */
export function sharedSheet(link: Link, page: Document): Shareable {
  const chart = () => page.querySelector<SVGSVGElement>('.stress-chart svg');
  const label = () => page.querySelector<HTMLInputElement>('#box-label')?.value.trim() ?? '';
  const finding = () => textIn(page, '#chart-finding');
  const { origin, pathname } = page.location;
  const save = async (kind: PictureKind) => {
    const svg = chart();
    if (!svg) return;
    const notes = [label(), textIn(page, '.chart-key')].filter((note) => note !== '');
    await savePicture('chart', kind, {
      svg,
      finding: finding(),
      notes,
      address: origin + pathname,
    });
  };
  return {
    title: label() || page.title,
    finding,
    address: link,
    words: WORDS,
    save: chart() ? save : undefined,
  };
}

/** A link made once for as long as `sheet` is the same: browsers let a page copy only at once after a press. */
export function madeOnce(link: Link, sheet: () => unknown): Link {
  let of: unknown;
  let made: ReturnType<Link> | undefined;
  return () => {
    if (made && of === sheet()) return made;
    of = sheet();
    made = link();
    made.catch(() => {
      made = undefined; // tried again with the next press
    });
    return made;
  };
}

/** The panel of the open sheet, whose link is made when it opens. */
export function sheetPanel(link: Link, sheet: () => unknown, page: Document): ComponentType {
  const ready = madeOnce(link, sheet);
  void ready();
  return () => <Panel of={sharedSheet(ready, page)} />;
}

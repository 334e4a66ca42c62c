/** What there is to share of a figure: its addresses, the code that puts it into another page, its picture. */
import { pageAddress } from '../link-keeper.ts';
import type { PageStore } from '../store.ts';
import { savePicture } from './save-picture.ts';
import type { PictureKind, Shareable } from './shareable.ts';

/** What is said of a figure's link. */
const WORDS = {
  copied: 'The link is copied. It opens this page with these numbers.',
  coded: 'A phone’s camera opens this page with these numbers.',
} as const;

const HEIGHT = 640; // px, where the page that holds it does not take the script that fits it

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');

/** The code for another page: the frame, and the script that gives it the figure's height. */
export function embedCode(address: string, script: string, title: string): string {
  return [
    `<iframe src="${escaped(address)}" title="${escaped(title)}" width="100%" height="${HEIGHT}" loading="lazy"></iframe>`,
    `<script src="${escaped(script)}" async></script>`,
  ].join('\n');
}

const shownIn = <Found extends Element>(figure: Element, selector: string): Found | undefined =>
  [...figure.querySelectorAll<Found>(selector)].find((each) => each.getClientRects().length > 0);

/** The figure on the page, with the numbers that the store holds when something is asked. */
export function sharedFigure(figure: HTMLElement, store: PageStore): Shareable {
  const alone = figure.querySelector<HTMLElement>('[data-alone]')?.dataset['alone'] ?? '';
  const base = document.body.dataset['base'] ?? '/';
  const title = document.querySelector('h1')?.textContent?.trim() ?? document.title;
  const address = () => pageAddress(store);
  const finding = () => shownIn(figure, '.finding')?.textContent?.trim() ?? '';
  const drawing = () => shownIn<SVGSVGElement>(figure, '.drawing svg');
  const name = `${figure.dataset['figure'] ?? 'figure'}`;
  const picture = (svg: SVGSVGElement) => ({
    svg,
    finding: finding(),
    notes: [...(shownIn(figure, '.title-block')?.children ?? [])].map(
      (note) => note.textContent ?? '',
    ),
    address: address(),
  });
  const save = async (kind: PictureKind) => {
    const svg = drawing();
    if (svg) await savePicture(name, kind, picture(svg));
  };
  return {
    title,
    finding,
    address,
    words: WORDS,
    embedCode: () =>
      embedCode(pageAddress(store, alone), `${location.origin}${base}embed.js`, title),
    save: drawing() && save,
  };
}

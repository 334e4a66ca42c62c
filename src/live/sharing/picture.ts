/**
 * A figure as a picture that stands for itself: its finding over it, under it its notes, its address and the license.
 * What the page's styles give a drawing is written into it, and its letters come along.
 * Units: drawing units of the figure.
 */
import serif from '../../styles/fonts/alegreya-400.woff2?url';
import sans from '../../styles/fonts/fira-sans-condensed-400.woff2?url';
import { lines } from './lines.ts';

/** What goes into a picture. */
export interface PictureParts {
  readonly svg: SVGSVGElement;
  readonly finding: string;
  readonly notes: readonly string[];
  readonly address: string;
}

/** A drawn picture: its text, and its size. */
export interface Drawn {
  readonly text: string;
  readonly width: number;
  readonly height: number;
}

const NAMESPACE = 'http://www.w3.org/2000/svg';
const LICENSE = 'The tension notebook · MIT license';
const MARGIN = 16;
const TITLE = { size: 18, leading: 24, family: 'Alegreya' };
const SMALL = { size: 12, leading: 16, family: 'Fira Sans Condensed' };
const SHARPNESS = 2; // pixels of the PNG for a drawing unit

/** What of a style makes a difference to a drawing. */
const STYLES = [
  'fill',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linejoin',
  'vector-effect',
  'paint-order',
  'opacity',
  'font-family',
  'font-size',
  'font-style',
  'font-weight',
  'text-decoration-line',
] as const;

/** Copies a drawing with its styles as attributes, without what is only for fingers and readers aloud. */
function standalone(svg: SVGSVGElement): SVGSVGElement {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  const copies = [copy, ...copy.querySelectorAll('*')];
  for (const [place, original] of [svg, ...svg.querySelectorAll('*')].entries()) {
    const style = getComputedStyle(original);
    const target = copies[place];
    for (const name of STYLES) target?.setAttribute(name, style.getPropertyValue(name));
    for (const name of ['class', 'role', 'tabindex', 'data-sym']) target?.removeAttribute(name);
    if (style.display === 'none') target?.setAttribute('display', 'none');
  }
  return copy;
}

async function asData(address: string): Promise<string> {
  const bytes = new Uint8Array(await (await fetch(address)).arrayBuffer());
  return `data:font/woff2;base64,${btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''))}`;
}

async function fontRules(): Promise<string> {
  const fonts = [
    [TITLE.family, serif],
    [SMALL.family, sans],
  ] as const;
  const rules = fonts.map(
    async ([family, address]) =>
      `@font-face{font-family:"${family}";src:url(${await asData(address)})}`,
  );
  return (await Promise.all(rules)).join('');
}

function element(name: string, attributes: Readonly<Record<string, string | number>>, text = '') {
  const made = document.createElementNS(NAMESPACE, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value));
  made.textContent = text;
  return made;
}

/** Lines of words one under the other, the first on `top`. */
function block(
  words: readonly string[],
  { size, leading, family }: typeof TITLE,
  top: number,
  ink: string,
): readonly SVGElement[] {
  return words.map((text, place) =>
    element(
      'text',
      {
        x: MARGIN,
        y: top + place * leading + size,
        'font-size': size,
        'font-family': family,
        fill: ink,
      },
      text,
    ),
  );
}

/** The picture as SVG. @throws where the letters cannot be fetched */
export async function svgOf({ svg, finding, notes, address }: PictureParts): Promise<Drawn> {
  const { width: drawn, height: tall } = svg.viewBox.baseVal;
  const width = drawn + 2 * MARGIN;
  const page = getComputedStyle(document.documentElement);
  const [paper, ink, pencil] = ['--paper', '--ink', '--pencil'].map((name) =>
    page.getPropertyValue(name),
  );
  const title = lines(finding, drawn, TITLE);
  const foot = [notes.join('; '), address, LICENSE].flatMap((text) => lines(text, drawn, SMALL));
  const top = MARGIN + title.length * TITLE.leading + MARGIN / 2;
  const under = top + tall + MARGIN;
  const height = under + foot.length * SMALL.leading + MARGIN;
  const whole = element('svg', { width, height, viewBox: `0 0 ${width} ${height}` });
  const copy = standalone(svg);
  for (const [key, value] of Object.entries({ x: MARGIN, y: top, width: drawn, height: tall }))
    copy.setAttribute(key, String(value));
  whole.append(
    element('style', {}, await fontRules()),
    element('rect', { width, height, fill: paper ?? '' }),
    ...block(title, TITLE, MARGIN, ink ?? ''),
    copy,
    ...block(foot, SMALL, under, pencil ?? ''),
  );
  return { text: new XMLSerializer().serializeToString(whole), width, height };
}

/** The picture as PNG. @throws where the browser does not draw it */
export async function pngOf({ text, width, height }: Drawn): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
  const image = new Image();
  image.src = address;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = SHARPNESS * width;
  canvas.height = SHARPNESS * height;
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  URL.revokeObjectURL(address);
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  if (!blob) throw new RangeError('the picture must be drawn');
  return blob;
}

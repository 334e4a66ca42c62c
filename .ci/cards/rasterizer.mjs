/** Draws an SVG as PNG, in our own faces and no others, and tells how wide a text is: the same on every machine. */
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { initWasm, Resvg } from '@resvg/resvg-wasm';
import subsetFont from 'subset-font';
import { root } from '../machine.mjs';

const FACES = join(root, 'src/styles/fonts');
const LAST_SIGN = 0x2fff;

/** Every sign that a face may have: it is not cut down, but only written as the rasterizer reads it. */
const everySign = () =>
  Array.from({ length: LAST_SIGN - 31 }, (_, place) => String.fromCharCode(place + 32)).join('');

async function faces() {
  const names = (await readdir(FACES)).filter((name) => name.endsWith('.woff2'));
  const signs = everySign();
  return Promise.all(
    names.map(async (name) =>
      subsetFont(await readFile(join(FACES, name)), signs, { targetFormat: 'truetype' }),
    ),
  );
}

let started;
const start = () => {
  const code = fileURLToPath(import.meta.resolve('@resvg/resvg-wasm/index_bg.wasm'));
  started ??= readFile(code).then((bytes) => initWasm(bytes));
  return started;
};

/** Signs that our faces lack, and what is drawn for them; a browser borrows them from another face. */
const STAND_INS = new Map([
  ['÷', '/'],
  ['←', ''],
  ['→', ''],
]);
const SPACES = /[\s\u202f]/g;

/** The signs that an SVG sets as text. */
const signsIn = (svg) =>
  new Set(svg.replace(/<style>.*?<\/style>|<[^>]*>|&#?\w+;/gs, '').replaceAll(SPACES, ''));

/** The rasterizer: an SVG as PNG, and the width of a text in px. */
export async function rasterizer() {
  await start();
  const font = { fontBuffers: await faces(), defaultFontFamily: 'Fira Sans Condensed' };
  const drawn = (svg) => new Resvg(svg, { font });
  const width = (text, { size, family }) => {
    const safe = text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
    const set = `<text font-family="${family}" font-size="${size}">${safe}</text>`;
    return drawn(`<svg xmlns="http://www.w3.org/2000/svg">${set}</svg>`).getBBox()?.width ?? 0;
  };
  const known = new Set();
  const check = (sign) => {
    if (!known.has(sign) && width(sign, { size: 40, family: 'Alegreya' }) === 0)
      throw new RangeError(`a sign on a card must be in one of our faces (was ${sign})`);
    known.add(sign);
  };
  const png = (svg) => {
    const inFaces = svg.replace(/[÷←→]/g, (sign) => STAND_INS.get(sign));
    signsIn(inFaces).forEach(check);
    return drawn(inFaces).render().asPng();
  };
  return { png, width };
}

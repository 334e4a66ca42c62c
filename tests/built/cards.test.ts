/** Every lesson and every worked example has a card of its own: the picture that a messenger shows of its link. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type BuiltSite, builtText, linkedFile, SITES } from './built-site.ts';
import { attribute } from './html.ts';
import { type Picture, pictureOf } from './png.ts';

const WITH_CARDS = /^(lessons|worked)\/[^/]+\/index\.html$/;
const LEAST_INK = 0.01; // of either half

function said(site: BuiltSite, file: string, property: string): string {
  const tags = site.pages.get(file)?.tags ?? [];
  return attribute(
    tags.find((tag) => attribute(tag, 'property') === property),
    'content',
  );
}

/** How much of a picture's left and right half is not as its first pixel is. */
function inkOf({ width, height, pixels }: Picture): readonly [number, number] {
  const ink: [number, number] = [0, 0];
  for (let at = 0; at < pixels.length; at += 4) {
    if (pixels[at] !== pixels[0] || pixels[at + 2] !== pixels[2])
      ink[((at / 4) % width) * 2 < width ? 0 : 1] += 2 / (width * height);
  }
  return ink;
}

describe.each(SITES)('the cards of the site at $base', (site) => {
  const pages = [...site.pages.keys()].filter((file) => WITH_CARDS.test(file));
  const cardOf = (file: string) => linkedFile(site, file, said(site, file, 'og:image')) ?? '';

  it('are for pages that are there', () => expect(pages.length).toBeGreaterThan(30));

  it.each(pages)('%s: has words on its left and a drawing on its right', (file) => {
    const card = pictureOf(readFileSync(join(site.folder, cardOf(file))));
    expect([card.width, card.height]).toEqual([1200, 630]);
    expect(Math.min(...inkOf(card))).toBeGreaterThan(LEAST_INK);
  });

  it.each(pages)('%s: says how large it is, and in words what is on it', (file) => {
    expect(said(site, file, 'og:image:width')).toBe('1200');
    expect(said(site, file, 'og:image:height')).toBe('630');
    const finding = said(site, file, 'og:image:alt').split('. ')[0] ?? '';
    expect(finding).not.toBe('');
    expect(builtText(site, file).replace(/<[^>]*>/g, '')).toContain(finding);
  });

  it('differ from each other', () => {
    const hashes = pages.map((file) =>
      createHash('sha256')
        .update(readFileSync(join(site.folder, cardOf(file))))
        .digest('hex'),
    );
    expect(new Set(hashes).size).toBe(pages.length);
  });

  it('are not kept on the device', () => expect(builtText(site, 'sw.js')).not.toContain('cards/'));
});

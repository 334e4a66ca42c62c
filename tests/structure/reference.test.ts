/** The reference's data: what they name exists, and what exists is named. */
import { describe, expect, it } from 'vitest';
import { fieldsOf, keysOf, lessons, listOf } from './content-files.ts';
import { filesUnder, textOf } from './project-files.ts';

const slugs = lessons().map(([path]) => path.replace(/^.*\/|\.mdx$/g, ''));
const sources = keysOf(textOf('content/sources.yaml'));
const formulae = filesUnder('content/formulae').map((path) => [path, textOf(path)] as const);
const symbols = textOf('content/symbols.yaml');

describe('formulae', () => {
  it('are there, each with its limits and at least one source', () => {
    const count = (text: string, field: string) => fieldsOf(text, field).length;
    expect(formulae.length).toBeGreaterThan(0);
    for (const [path, text] of formulae) {
      const names = [...text.matchAll(/^ {2}- name:/gm)].length;
      expect([path, count(text, 'limits')]).toEqual([path, names]);
      expect([path, [...text.matchAll(/^ {4}sources: \[\w/gm)].length]).toEqual([path, names]);
    }
  });

  it('name a planned lesson and known sources', () => {
    const taught = formulae.flatMap(([, text]) => fieldsOf(text, 'taught'));
    const named = formulae.flatMap(([, text]) => listOf(text, 'sources'));
    expect(taught.filter((slug) => !slugs.includes(slug))).toEqual([]);
    expect(named.filter((key) => !sources.includes(key))).toEqual([]);
  });
});

describe('symbols', () => {
  it('name known sources for what is usual', () => {
    const named = [...symbols.matchAll(/source: ([\w-]+)/g)].map((match) => match[1] ?? '');
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((key) => !sources.includes(key))).toEqual([]);
  });

  it('stand in their order', () => {
    const orders = [...symbols.matchAll(/order: (\d+)/g)].map((match) => Number(match[1]));
    expect(orders).toEqual(orders.map((_, place) => place + 1));
  });
});

describe('every symbol of a formula', () => {
  it('that is written in an ink is among the symbols, in that ink', () => {
    const listed = (ink: string) =>
      [...symbols.matchAll(new RegExp(`tex: '([^']+)'[^}]*ink: ${ink}`, 'g'))].map(
        (match) => match[1],
      );
    const used = (ink: string) =>
      formulae.flatMap(([, text]) =>
        [...text.matchAll(new RegExp(`\\\\${ink}\\{([^{}]+)\\}`, 'g'))].map((match) => match[1]),
      );
    const odd = (['hand', 'steel'] as const).flatMap((ink) =>
      used(ink).filter((symbol) => !listed(ink).includes(symbol)),
    );
    expect([...new Set(odd)]).toEqual([]);
  });
});

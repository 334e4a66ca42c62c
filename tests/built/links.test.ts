/** Every link and anchor inside the built site leads somewhere, also in a sub-folder; no page asks a third party. */
import { describe, expect, it } from 'vitest';
import { addressOf, type BuiltSite, builtText, linkedFile, ORIGIN, SITES } from './built-site.ts';
import { attribute, has, type Tag } from './html.ts';

const SHARED_STATE = /^v=\d/; // the fragment of a shared link is the state of a page, not a place on it
const FETCHED_LINKS =
  /\b(stylesheet|icon|manifest|preload|modulepreload|preconnect|dns-prefetch|apple-touch-icon)\b/;

/** What the browser asks for by itself when it meets the tag. */
function requestsOf(tag: Tag): readonly string[] {
  const value = (name: string): string => attribute(tag, name);
  if (tag.tagName === 'a' || tag.tagName === 'area') return [];
  if (tag.tagName === 'link') return FETCHED_LINKS.test(value('rel')) ? [value('href')] : [];
  if (tag.tagName === 'meta') return value('property') === 'og:image' ? [value('content')] : [];
  const several = value('srcset')
    .split(',')
    .map((each) => each.trim().split(/\s+/)[0] ?? '');
  const one = ['src', 'poster', 'data', 'action', 'formaction', 'href'].map(value);
  return [...one, ...several].filter((address) => address !== '');
}

const isWritten = (address: string): boolean => /^(data|blob):/.test(address);

/** Where following `link` from `from` fails, or nothing. */
function faultOf(site: BuiltSite, from: string, link: string): string | undefined {
  const file = linkedFile(site, from, link);
  if (file === undefined) return `${from}: ${link} leaves ${site.base}`;
  if (!site.files.has(file)) return `${from}: ${link} leads to nothing`;
  const anchor = decodeURIComponent(new URL(link, addressOf(site, from)).hash.slice(1));
  const target = site.pages.get(file);
  if (anchor === '' || !target || target.anchors.has(anchor) || SHARED_STATE.test(anchor))
    return undefined;
  return `${from}: ${link} leads to no place on its page`;
}

/** Everything that each page asks for by itself, then everything that a reader can follow. */
const requests = (site: BuiltSite): readonly (readonly [string, string])[] =>
  [...site.pages].flatMap(([file, { tags }]) =>
    tags
      .flatMap(requestsOf)
      .filter((address) => !isWritten(address))
      .map((address) => [file, address] as const),
  );

const followed = (site: BuiltSite): readonly (readonly [string, string])[] =>
  [...site.pages].flatMap(([file, { tags }]) =>
    tags
      .filter((tag) => tag.tagName === 'a' && has(tag, 'href'))
      .map((tag) => [file, attribute(tag, 'href')] as const),
  );

const styleRequests = (site: BuiltSite): readonly (readonly [string, string])[] =>
  [...site.files]
    .filter((file) => file.endsWith('.css'))
    .flatMap((file) =>
      [...builtText(site, file).matchAll(/url\(\s*['"]?([^'")]+)|@import\s+['"]([^'"]+)/g)].map(
        (match) => [file, match[1] ?? match[2] ?? ''] as const,
      ),
    )
    .filter(([, address]) => !isWritten(address));

const isOutside = (site: BuiltSite, from: string, address: string): boolean =>
  new URL(address, addressOf(site, from)).origin !== ORIGIN;

describe.each(SITES)('the site at $base', (site) => {
  it('has pages with links', () => expect(followed(site).length).toBeGreaterThan(0));

  it('leads somewhere with every link and anchor of its own', () => {
    const inside = followed(site).filter(([from, link]) => !isOutside(site, from, link));
    expect(inside.flatMap(([from, link]) => faultOf(site, from, link) ?? [])).toEqual([]);
  });

  it('has every script, style, picture and font that it asks for', () => {
    const all = [...requests(site), ...styleRequests(site)];
    expect(all.flatMap(([from, address]) => faultOf(site, from, address) ?? [])).toEqual([]);
  });

  it('asks no third party for anything', () => {
    const all = [...requests(site), ...styleRequests(site)];
    expect(all.filter(([from, address]) => isOutside(site, from, address))).toEqual([]);
  });

  it('links out only by https', () => {
    const out = followed(site).filter(([from, link]) => isOutside(site, from, link));
    expect(out.filter(([, link]) => !/^(https:|mailto:)/.test(link))).toEqual([]);
  });
});

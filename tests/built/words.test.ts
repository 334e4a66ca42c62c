/** Words of a built page never run into each other: a line break in a template beside a tag leaves no space behind. */
import { describe, expect, it } from 'vitest';
import { SITES } from './built-site.ts';

const RUN_TOGETHER = /[\p{L}\d.,;:)]<(?:a|em|i)\b[^>]*>[\p{L}]|<\/(?:a|em|i)>[\p{L}\d(]/gu;

const runTogether = (html: string): readonly string[] =>
  [
    ...html.replace(/<script[\s\S]*?<\/script>|<math[\s\S]*?<\/math>/g, '').matchAll(RUN_TOGETHER),
  ].map(([text]) => text);

describe.each(SITES)('the words at $base', ({ pages }) => {
  it('stand apart from the links beside them', () => {
    const odd = [...pages].flatMap(([file, { html }]) =>
      runTogether(html).map((text) => `${file}: ${text}`),
    );
    expect(odd).toEqual([]);
  });
});

describe('the check of the words', () => {
  it.each(['anything here.<a href="/x/">Cautions</a>', 'see <a href="/x/">this</a>and that'])(
    'catches %s',
    (html) => expect(runTogether(html)).toHaveLength(1),
  );

  it.each(['see <a href="/x/">this</a>, and that', '(<a href="/x/">this</a>)'])(
    'lets %s pass',
    (html) => expect(runTogether(html)).toEqual([]),
  );
});

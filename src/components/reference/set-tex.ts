/**
 * Formulae set by KaTeX at build time, as HTML with MathML beside it for screen readers.
 * Macros of ours: `\hand{…}` and `\steel{…}` write a part in one of the two inks.
 */
import katex from 'katex';

/** KaTeX's HTML and MathML for TeX of ours; only classes and data attributes are let through. */
export function setTex(tex: string, displayMode: boolean): string {
  const html = katex.renderToString(tex, {
    displayMode,
    output: 'htmlAndMathml',
    strict: false,
    macros: { '\\hand': '\\htmlClass{hand}{#1}', '\\steel': '\\htmlClass{steel}{#1}' },
    trust: ({ command }) => command === '\\htmlData' || command === '\\htmlClass',
  });
  return html.replace(/<annotation[\s\S]*?<\/annotation>/g, '');
}

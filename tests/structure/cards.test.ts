/** How the card of a shared link comes out of a built page. */
import { describe, expect, it } from 'vitest';
import { drawingStyles, tokensOf } from '../../.ci/cards/drawing-styles.mjs';
import { cardSvg } from '../../.ci/cards/figure-card.mjs';
import { pageFigure } from '../../.ci/cards/page-figure.mjs';
import { rasterizer } from '../../.ci/cards/rasterizer.mjs';
import { withCard } from '../../.ci/cards.mjs';

const SHEETS = [
  '@layer tokens { :root { --ink: #123; --serif: "A", b; } @media print { :root { --ink: #000 } } }',
  `@layer figures {
    svg .thin, svg text.hand { stroke: var(--ink); cursor: grab }
    svg .numeral { font: italic 1.3em / 1 var(--serif) }
    svg .handle:active { fill: red }
    .figure .finding { opacity: 0 }
    @media print { svg .thin { stroke: black } }
  }`,
];

const body = (kind: string, drawing: string) =>
  `<div class="body ${kind}"><p class="finding">${kind} is\n  3&nbsp;mm.</p><div class="drawing">${drawing}</div><p class="visually-hidden">So.</p></div>`;
const page = (figures: string) =>
  `<article><p class="label">Lesson 2</p><h1>A <em>name</em></h1>${figures}</article>`;
const SVG = '<svg viewBox="0 0 360 200"><text data-is>a&nbsp;b &lt; c</text></svg>';

describe('the styles of drawings', () => {
  it('are those of the light theme on a screen, each token in its place', () =>
    expect(drawingStyles(SHEETS)).toBe(
      'svg .thin,svg text.hand{stroke:#123}svg .numeral{font-style:italic;font-size:1.3em;font-family:"A", b}',
    ));
  it('stop at a font that they cannot take apart', () =>
    expect(() => drawingStyles(['@layer a { svg .b { font: inherit } }'])).toThrow(
      '(was inherit)',
    ));
});

describe('the figure of a page', () => {
  it('is the first that is drawn, in its narrow drawing and metric units', () => {
    const table = `<live-figure>${body('variant-narrow q-metric', '<table></table>')}</live-figure>`;
    const drawn = ['variant-wide q-metric', 'variant-narrow q-us', 'variant-narrow q-metric'];
    const found = pageFigure(
      page(`${table}<live-figure>${drawn.map((kind) => body(kind, SVG)).join('')}</live-figure>`),
    );
    expect(found).toEqual({
      label: 'Lesson 2',
      title: 'A name',
      says: 'variant-narrow q-metric is 3\u00a0mm.',
      description: 'So.',
      drawing: { viewBox: '0 0 360 200', svg: '<text data-is="">a&#160;b &lt; c</text>' },
    });
  });
  it('says an example’s answer rather than its finding, in metric units', () => {
    const answer =
      '<p class="answer">It is <span class="q-metric">3&nbsp;mm</span><span class="q-us">0.1&nbsp;in</span>.</p>';
    const figure = `<live-figure>${body('variant-narrow q-metric', SVG)}</live-figure>`;
    expect(pageFigure(page(answer + figure))?.says).toBe('It is 3\u00a0mm.');
  });
  it('is none where nothing is drawn', () => expect(pageFigure(page(''))).toBeUndefined());
});

describe('the head of a page with a card', () => {
  const head = (image: string) =>
    `<meta property="og:image" content="${image}"><meta property="og:image:width" content="1200"><meta property="og:image:alt" content="the site’s">`;
  it.each([
    ['/notebook/', '/notebook/'],
    ['https://example.org/a/', 'https://example.org/a/'],
  ])('names it under the same address: %s', (before, after) =>
    expect(withCard(head(`${before}card.png`), 'cards/lessons/a.png', 'so & "so"')).toBe(
      head(`${after}cards/lessons/a.png`).replace('the site’s', 'so &amp; &quot;so&quot;'),
    ),
  );
});

describe('a card', () => {
  const kit = (widthOf: (text: string) => number) => ({
    tokens: tokensOf(SHEETS),
    styles: drawingStyles(SHEETS),
    mark: '',
    widthOf,
  });
  const card = { about: 'Lesson', drawing: { viewBox: '0 0 360 200', svg: '' } };

  it('refuses words that do not fit', () =>
    expect(() =>
      cardSvg(
        { ...card, says: 'much too long '.repeat(30) },
        kit((text) => 20 * text.length),
      ),
    ).toThrow('what a card says must fit'));

  it('is drawn as a picture of the size that messengers ask for', async () => {
    const { png, width } = await rasterizer();
    const picture = Buffer.from(png(cardSvg({ ...card, says: 'It is 3 mm.' }, kit(width))));
    expect([picture.readUInt32BE(16), picture.readUInt32BE(20)]).toEqual([1200, 630]);
  });

  it('has no sign that our faces lack', async () => {
    const { png } = await rasterizer();
    const svg = (text: string) =>
      `<svg xmlns="http://www.w3.org/2000/svg"><text>${text}</text></svg>`;
    expect(() => png(svg('a \u2603'))).toThrow('(was \u2603)');
    expect(png(svg('a ÷ σ ± 3\u202fmm')).length).toBeGreaterThan(0);
  });

  it('measures a text in our faces', async () => {
    const { width } = await rasterizer();
    const [one, two] = ['n', 'nn'].map((text) => width(text, { size: 40, family: 'Alegreya' }));
    expect(one).toBeGreaterThan(10);
    expect(two).toBeGreaterThan(1.8 * (one ?? 0));
  });
});

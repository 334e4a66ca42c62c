/**
 * What our stylesheets say of drawings, as one plain sheet for who knows neither layers nor tokens: the light theme,
 * class by class, each token in its place.
 */
import postcss from 'postcss';

/** What makes a difference to a still drawing. */
const DRAWN = /^(fill|stroke|stroke-\w+|paint-order|opacity)$/;
const PLAIN = /^(svg |\.field-)[\w .-]+$/; // one class or element below another, and no more
const FONT = /^(italic )?(?:\d+ )?([\d.]+\w+) \/ \S+ (.+)$/;

/** The rules that hold on every page: those directly in a layer. */
const alwaysRules = (texts) =>
  texts
    .flatMap((text) => postcss.parse(text).nodes)
    .filter(({ type, name }) => type === 'atrule' && name === 'layer')
    .flatMap(({ nodes }) => nodes ?? [])
    .filter(({ type }) => type === 'rule');

/** The tokens of the light theme by name. */
export function tokensOf(texts) {
  const roots = alwaysRules(texts).filter(({ selector }) => selector === ':root');
  return new Map(roots.flatMap(({ nodes }) => nodes.map(({ prop, value }) => [prop, value])));
}

/** The shorthand of a font, taken apart. */
function fontDeclarations(value) {
  const [, style, size, family] = FONT.exec(value) ?? [];
  if (!family)
    throw new RangeError(`a drawing's font must have a size and a family (was ${value})`);
  return [...(style ? ['font-style:italic'] : []), `font-size:${size}`, `font-family:${family}`];
}

/** The rules of drawings in some stylesheets, with their tokens resolved. */
export function drawingStyles(texts) {
  const tokens = tokensOf(texts);
  const resolved = (value) => value.replace(/var\((--[\w-]+)\)/g, (_, name) => tokens.get(name));
  return alwaysRules(texts)
    .map(({ selectors, nodes }) => {
      const plain = selectors.filter((selector) => PLAIN.test(selector));
      const said = nodes
        .filter(({ type }) => type === 'decl')
        .flatMap(({ prop, value }) => {
          if (prop === 'font') return fontDeclarations(resolved(value));
          return DRAWN.test(prop) ? [`${prop}:${resolved(value)}`] : [];
        });
      return plain.length > 0 && said.length > 0 ? `${plain.join(',')}{${said.join(';')}}` : '';
    })
    .join('');
}

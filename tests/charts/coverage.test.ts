/** The plot of the study: every kind of series with both its shares, named once, without a style of its own. */
import { describe, expect, it } from 'vitest';
import { attributeOf, elementsOf } from '../../.ci/html.mjs';
import { coveragePlot } from '../../src/charts/coverage.ts';

const ROWS = [
  { name: 'no toe', held: 0.98, worst: 0.95 },
  { name: 'long toes', held: 0.9, worst: 0.2 },
];
const html = () => coveragePlot(ROWS, 'Two kinds of series.');
const placesOf = (part: string, tag: string, attribute: string) =>
  elementsOf(html())
    .filter(({ parentNode }) => parentNode && 'attrs' in parentNode)
    .filter(({ tagName, parentNode }) => {
      const group = parentNode as Parameters<typeof attributeOf>[0];
      return tagName === tag && attributeOf(group, 'class') === part;
    })
    .map((element) => Number(attributeOf(element, attribute)));

describe('the plot of the study', () => {
  it('places both shares of each row on one scale, the promise too', () => {
    const [held, worst] = [placesOf('held', 'circle', 'cx'), placesOf('worst', 'circle', 'cx')];
    const [promised] = placesOf('promised', 'line', 'x1');
    const perShare = ((held[0] ?? 0) - (worst[1] ?? 0)) / (0.98 - 0.2);
    expect(perShare).toBeGreaterThan(100);
    expect(((held[1] ?? 0) - (worst[1] ?? 0)) / perShare).toBeCloseTo(0.7, 6);
    expect(((worst[0] ?? 0) - (promised ?? 0)) / perShare).toBeCloseTo(0, 2); // Plot sets a rule on half a pixel
  });

  it('names every row', () => {
    for (const { name } of ROWS) expect(html()).toContain(`>${name}</text>`);
  });

  it('is one picture with one name', () => {
    const [svg, ...parts] = elementsOf(html()).filter((element) =>
      attributeOf(element, 'aria-label'),
    );
    expect(svg && attributeOf(svg, 'role')).toBe('img');
    expect(svg && attributeOf(svg, 'aria-label')).toBe('Two kinds of series.');
    expect(parts).toEqual([]);
  });

  it('brings no style with it, so that a strict policy holds', () => {
    const styled = elementsOf(html()).filter(
      (element) => element.tagName === 'style' || attributeOf(element, 'style') !== undefined,
    );
    expect(styled).toEqual([]);
  });
});

// @vitest-environment jsdom
/** The chart of a class: a point and an interval for each, the mean and the band about it, on one scale. */
import { describe, expect, it } from 'vitest';
import { classPlot } from '../../src/charts/class-board.ts';

const points = [
  { id: 7, name: 'Ann', value: 90, low: 80, high: 100 },
  { id: 3, name: '<b>Ben</b> with a very long name', value: 110, low: 100, high: 120 },
];
const picture = {
  points,
  spread: { mean: 100, standardDeviation: 10 },
  label: 'stress, MPa',
  title: 'Two learners',
  width: 400,
};
const numbers = (svg: Element, selector: string, name: string) =>
  [...svg.querySelectorAll(selector)].map((each) => Number(each.getAttribute(name)));

describe('the chart of a class', () => {
  const svg = classPlot(picture);

  it('has each point in the middle of its interval, the mean between them', () => {
    const [ann = 0, ben = 0] = numbers(svg, '.class-point circle', 'cx');
    const lows = numbers(svg, '.class-interval line', 'x1');
    const highs = numbers(svg, '.class-interval line', 'x2');
    expect(ann).toBeLessThan(ben);
    expect(((lows[0] ?? 0) + (highs[0] ?? 0)) / 2).toBeCloseTo(ann, 6);
    const [mean = 0] = numbers(svg, '.class-mean line', 'x1');
    expect(Math.abs(mean - (ann + ben) / 2)).toBeLessThan(0.6); // a rule is set on half a pixel
    const [band = 0] = numbers(svg, '.class-band rect', 'width');
    expect(band).toBeCloseTo(ben - ann, 6);
  });

  it('names each learner as text, cut where it is long', () => {
    expect(svg.querySelector('b')).toBeNull();
    expect(svg.textContent).toContain('Ann');
    expect(svg.textContent).toContain('<b>Ben</b> with a v…');
  });

  it('is one picture named once, without a style', () => {
    expect(svg.getAttribute('aria-label')).toBe('Two learners');
    expect(svg.querySelectorAll('[aria-label], style, [style]')).toHaveLength(0);
  });

  it('has no band where there is no spread', () =>
    expect(classPlot({ ...picture, spread: undefined }).querySelector('.class-band')).toBeNull());
});

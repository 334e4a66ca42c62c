/**
 * How often intervals that promise 95 % held the truth: for each kind of series the share of all and of the worst.
 * Drawn once, by the build, in a document of its own.
 * Units: shares of 1 in; percent on the axis; drawing units otherwise.
 */
import * as Plot from '@observablehq/plot';
import { JSDOM } from 'jsdom';

/** One kind of series; shares of 1. */
export interface Coverage {
  readonly name: string;
  readonly held: number;
  readonly worst: number;
}

const PROMISED = 95; // %
const ROW = 22;

function marks(rows: readonly Coverage[]): Plot.Markish[] {
  const held = ({ held }: Coverage) => 100 * held;
  const worst = ({ worst }: Coverage) => 100 * worst;
  return [
    Plot.ruleX([PROMISED], { className: 'promised' }),
    Plot.ruleY(rows, { y: 'name', x1: worst, x2: held, className: 'axis' }),
    Plot.dot(rows, { y: 'name', x: worst, r: 3.5, className: 'worst' }),
    Plot.dot(rows, { y: 'name', x: held, r: 3.5, className: 'held' }),
  ];
}

/** The plot as SVG, without a style of its own: one picture, named once. */
export function coveragePlot(rows: readonly Coverage[], title: string): string {
  const svg = Plot.plot({
    document: new JSDOM().window.document,
    className: 'plot',
    ariaLabel: title,
    width: 360,
    height: 48 + ROW * rows.length,
    marginLeft: 182,
    marginRight: 14,
    marginBottom: 40,
    x: { domain: [0, 100], label: 'held the true zero, %', labelArrow: 'none', ticks: 5 },
    y: { domain: rows.map(({ name }) => name), label: null, tickSize: 0 },
    marks: marks(rows),
  });
  svg.setAttribute('role', 'img');
  svg.querySelector('style')?.remove();
  for (const part of svg.querySelectorAll('[aria-label]')) part.removeAttribute('aria-label');
  return svg.outerHTML;
}

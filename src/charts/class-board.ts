/**
 * A class on one scale: a point with its interval for each learner, the mean as a line, one standard deviation either
 * way as a band.
 * Units: drawing units; values in the reader's unit, as they are given.
 */
import * as Plot from '@observablehq/plot';
import { formatNumber } from '../units/format-number.ts';

/** One learner; all numbers in the unit of the axis. */
export interface ClassPoint {
  readonly id: number;
  readonly name: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What is drawn, in the order of the points. */
export interface ClassPicture {
  readonly points: readonly ClassPoint[];
  readonly spread?: { readonly mean: number; readonly standardDeviation: number } | undefined;
  readonly label: string; // of the axis
  readonly title: string;
  readonly width: number; // drawing units, which are pixels on screen
}

const ROW = 20;
const LETTER = 7.5; // width of one of the names
const MOST_LETTERS = 20;
const BESIDE = { top: 24, right: 28, bottom: 40 };

const short = (name: string): string =>
  name.length > MOST_LETTERS ? `${name.slice(0, MOST_LETTERS - 1)}…` : name;

/** The band and the line of the class, under its points. */
function classMarks({ spread }: ClassPicture): Plot.Markish[] {
  if (!spread) return [];
  const { mean, standardDeviation } = spread;
  const [x1, x2] = [mean - standardDeviation, mean + standardDeviation];
  return [
    Plot.rect([spread], { x1, x2, className: 'class-band' }),
    Plot.ruleX([mean], { className: 'class-mean' }),
    Plot.text([mean], {
      x: mean,
      frameAnchor: 'top',
      dy: -16,
      text: () => 'mean',
      className: 'class-word',
    }),
  ];
}

/** The chart as SVG, one picture named once, without a style of its own. */
export function classPlot(picture: ClassPicture): SVGSVGElement {
  const { points, label, title, width } = picture;
  const names = new Map(points.map(({ id, name }) => [id, short(name)]));
  const longest = Math.max(0, ...[...names.values()].map(({ length }) => length));
  const svg = Plot.plot({
    className: 'plot',
    width,
    height: BESIDE.top + ROW * points.length + BESIDE.bottom,
    marginTop: BESIDE.top,
    marginRight: BESIDE.right,
    marginBottom: BESIDE.bottom,
    marginLeft: 12 + LETTER * longest,
    x: {
      label,
      labelAnchor: 'center',
      labelArrow: 'none',
      ticks: Math.min(5, Math.floor(width / 90)),
      tickFormat: (value: number) => formatNumber(value, { significant: 4, trim: true }),
      nice: true,
    },
    y: {
      domain: points.map(({ id }) => id),
      type: 'band',
      tickFormat: (id: number) => names.get(id) ?? '',
      label: null,
      tickSize: 0,
    },
    marks: [
      ...classMarks(picture),
      Plot.ruleY(points, { y: 'id', x1: 'low', x2: 'high', className: 'class-interval' }),
      Plot.dot(points, { y: 'id', x: 'value', r: 4, className: 'class-point' }),
    ],
  }) as unknown as SVGSVGElement;
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', title);
  svg.querySelector('style')?.remove();
  for (const part of svg.querySelectorAll('[aria-label]')) part.removeAttribute('aria-label');
  return svg;
}

/**
 * The worksheet's chart: predicted stress as a band over torque, readings with their bars, the straight line through
 * those out of the toe, the zero with its interval, and the setting. One function from numbers to an element.
 * Units: SI in; axes in the reader's units.
 */
import * as Plot from '@observablehq/plot';
import type { MeasuredPoint, PredictedPoint } from '../core/worksheet.ts';
import { formatFixed } from '../units/format-number.ts';
import type { QuantityKind, UnitSystem } from '../units/kinds.ts';
import { unitLabel } from '../units/label.ts';
import { fromSi } from '../units/si-value.ts';

/** What the chart shows; all in SI, what is not known left out. */
export interface StressChart {
  readonly title: string;
  readonly description: string;
  readonly system: UnitSystem;
  readonly width: number; // px
  readonly curve: readonly PredictedPoint[];
  readonly points: readonly MeasuredPoint[];
  readonly line?: readonly { readonly torque: number; readonly stress: number }[];
  readonly zero?: { readonly torque: number; readonly low: number; readonly high: number };
  readonly setting?: { readonly torque: number; readonly stress: number };
}

interface Scales {
  readonly x: (torque: number) => number;
  readonly y: (stress: number) => number;
}

function scalesOf(system: UnitSystem): Scales {
  const to = (kind: QuantityKind) => (value: number) => fromSi(value, kind, system);
  return { x: to('torque'), y: to('stress') };
}

function predictedMarks({ curve }: StressChart, { x, y }: Scales): Plot.Markish[] {
  const at = { x: (point: PredictedPoint) => x(point.torque) };
  const ends = {
    y1: (point: PredictedPoint) => y(point.low),
    y2: (point: PredictedPoint) => y(point.high),
  };
  return [
    Plot.areaY(curve, { ...at, ...ends, className: 'chart-band' }),
    Plot.line(curve, { ...at, y: (point) => y(point.stress), className: 'chart-middle' }),
  ];
}

function measuredMarks({ points, line = [] }: StressChart, { x, y }: Scales): Plot.Markish[] {
  const at = { x: (point: MeasuredPoint) => x(point.torque) };
  const bars = {
    ...at,
    y1: (point: MeasuredPoint) => y(point.stress - 2 * point.sdStress),
    y2: (point: MeasuredPoint) => y(point.stress + 2 * point.sdStress),
  };
  const dots = { ...at, y: (point: MeasuredPoint) => y(point.stress) };
  const [toe, straight] = [points.filter((p) => p.inToe), points.filter((p) => !p.inToe)];
  return [
    Plot.line(line, { x: (p) => x(p.torque), y: (p) => y(p.stress), className: 'chart-line' }),
    Plot.ruleX(toe, { ...bars, className: 'chart-bar is-toe' }),
    Plot.ruleX(straight, { ...bars, className: 'chart-bar' }),
    Plot.dot(toe, { ...dots, r: 3.5, className: 'chart-dot is-toe' }),
    Plot.dot(straight, { ...dots, r: 3.5, className: 'chart-dot' }),
  ];
}

function zeroMarks({ zero }: StressChart, { x, y }: Scales): Plot.Markish[] {
  if (!zero) return [];
  const torque = x(zero.torque);
  return [
    Plot.ruleX([zero], {
      x: torque,
      y1: y(zero.low),
      y2: y(zero.high),
      marker: 'tick',
      className: 'chart-zero',
    }),
    Plot.dot([zero], { x: torque, y: 0, r: 4, symbol: 'times', className: 'chart-zero' }),
  ];
}

function settingMarks({ setting }: StressChart, { x, y }: Scales): Plot.Markish[] {
  if (!setting) return [];
  const [torque, stress] = [x(setting.torque), y(setting.stress)];
  return [
    Plot.ruleX([setting], { x: torque, y1: 0, y2: stress, className: 'chart-setting' }),
    Plot.ruleY([setting], { y: stress, x1: 0, x2: torque, className: 'chart-setting' }),
    Plot.dot([setting], {
      x: torque,
      y: stress,
      r: 5,
      symbol: 'square',
      className: 'chart-setting',
    }),
  ];
}

/** Numbers as everywhere on the site. */
const tickFormat = (value: number) => formatFixed(value, 6, true);

/** The chart as an element of `document`, with a title, and no style of its own. */
export function stressChart(chart: StressChart, document: Document): SVGSVGElement {
  const scales = scalesOf(chart.system);
  const label = (name: string, kind: QuantityKind) => `${name}, ${unitLabel(kind, chart.system)}`;
  const svg = Plot.plot({
    document,
    width: chart.width,
    height: Math.round(Math.max(260, chart.width * 0.62)),
    marginLeft: chart.system === 'us' ? 56 : 44,
    marginBottom: 40,
    marginRight: 12,
    ariaLabel: chart.title,
    ariaDescription: chart.description,
    x: {
      label: label('torque', 'torque'),
      tickFormat,
      labelArrow: 'none',
      labelAnchor: 'right',
      nice: true,
      zero: true,
    },
    y: { label: label('stress', 'stress'), tickFormat, labelArrow: 'none', nice: true },
    marks: [
      Plot.ruleY([0], { className: 'chart-axis' }),
      ...predictedMarks(chart, scales),
      ...settingMarks(chart, scales),
      ...measuredMarks(chart, scales),
      ...zeroMarks(chart, scales),
    ],
  }) as SVGSVGElement;
  for (const style of svg.querySelectorAll('style')) style.remove();
  // The picture is one thing with one name; names on its parts would be noise, and not allowed on a group.
  for (const part of svg.querySelectorAll('[aria-label]')) part.removeAttribute('aria-label');
  svg.setAttribute('class', 'stress-chart');
  svg.setAttribute('role', 'img');
  return svg;
}

/**
 * The log as a chart: each setting on its day, and the setting that the sheet recommends as a line.
 * Units: drawing units; torque in the reader's unit on the axis.
 */
import * as Plot from '@observablehq/plot';
import type { UnitSystem } from '../units/kinds.ts';
import { unitLabel } from '../units/label.ts';
import { fromSi } from '../units/si-value.ts';

/** What is written down of a setting. */
type Load = 'torque' | 'pressure';

/** One setting on one day. */
export interface LogEntry {
  readonly day: number; // ms since 1970
  readonly torque: number; // N·m, or Pa of a pressure
}

/** What is drawn. */
export interface LogPicture {
  readonly entries: readonly LogEntry[];
  readonly setting?: number | undefined; // N·m
  readonly system: UnitSystem;
  readonly load?: Load; // torque unless said
  readonly title: string;
}

/** The chart as SVG, without a style of its own. */
export function logPlot({
  entries,
  setting,
  system,
  load = 'torque',
  title,
}: LogPicture): SVGSVGElement {
  const shown = (torque: number) => fromSi(torque, load, system);
  const x = ({ day }: LogEntry) => new Date(day);
  const y = ({ torque }: LogEntry) => shown(torque);
  const svg = Plot.plot({
    className: 'plot',
    width: 360,
    height: 200,
    marginLeft: 44,
    x: { label: null },
    y: {
      label: `${load}, ${unitLabel(load, system)}`,
      labelArrow: 'none',
      zero: true,
      ticks: 5,
    },
    marks: [
      ...(setting === undefined
        ? []
        : [Plot.ruleY([shown(setting)], { className: 'log-setting' })]),
      Plot.lineY(entries, { x, y, className: 'log-line' }),
      Plot.dot(entries, { x, y, r: 3.5, className: 'log-dot' }),
    ],
  }) as unknown as SVGSVGElement;
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', title);
  svg.querySelector('style')?.remove();
  for (const part of svg.querySelectorAll('[aria-label]')) part.removeAttribute('aria-label');
  return svg;
}

// @vitest-environment jsdom
/** The worksheet's chart: what is known is drawn, named once, in the reader's units, without a style of its own. */
import { describe, expect, it } from 'vitest';
import { type StressChart, stressChart } from '../../src/charts/stress-chart.ts';

const point = (torque: number, stress: number, inToe: boolean) => ({
  row: 0,
  torque,
  stress,
  turns: undefined,
  sdTorque: 0.1,
  sdStress: 2e6,
  inToe,
});

const chart: StressChart = {
  title: 'At 14.5 N·m the band carries 107 ± 20 MPa.',
  description: 'Stress over torque.',
  system: 'metric',
  width: 400,
  curve: [1, 5, 15].map((torque) => ({
    torque,
    low: torque * 6e6,
    stress: torque * 8e6,
    high: torque * 10e6,
  })),
  points: [point(1.5, 20e6, true), point(5, 34e6, false), point(10, 72e6, false)],
  line: [
    { torque: 0.8, stress: 0 },
    { torque: 14.5, stress: 107e6 },
  ],
  zero: { torque: 0.8, low: -13e6, high: 17e6 },
  setting: { torque: 14.9, stress: 110e6 },
};

const drawn = (change: Partial<StressChart> = {}) => stressChart({ ...chart, ...change }, document);
const count = (svg: SVGSVGElement, selector: string) => svg.querySelectorAll(selector).length;

describe('the chart', () => {
  it('draws every reading with its bar, those in the toe apart', () => {
    const svg = drawn();
    expect(count(svg, '.chart-dot.is-toe circle')).toBe(1);
    expect(count(svg, '.chart-dot:not(.is-toe) circle')).toBe(2);
    expect(count(svg, '.chart-bar line')).toBe(3);
  });

  it('draws the prediction, the line, the zero and the setting', () => {
    const svg = drawn();
    for (const part of ['band path', 'middle path', 'line path', 'zero path', 'setting line'])
      expect(count(svg, `.chart-${part}`), part).toBeGreaterThan(0);
  });

  it('leaves out what is not known', () => {
    const { line: _l, zero: _z, setting: _s, ...rest } = chart;
    const svg = stressChart({ ...rest, points: [] }, document);
    expect(count(svg, '.chart-zero *, .chart-setting *, .chart-dot *, .chart-line path')).toBe(0);
    expect(count(svg, '.chart-band path')).toBe(1);
  });

  it('is one picture with one name', () => {
    const svg = drawn();
    expect(svg.getAttribute('role')).toBe('img');
    expect(svg.getAttribute('aria-label')).toBe(chart.title);
    expect(count(svg, '[aria-label]')).toBe(0);
  });

  it('names the reader’s units on its axes', () => {
    expect(drawn().textContent).toContain('stress, MPa');
    expect(drawn({ system: 'us' }).textContent).toContain('torque, ft·lbf');
  });

  it('brings no style with it, so that a strict policy holds', () => {
    expect(count(drawn(), 'style, [style]')).toBe(0);
  });
});

/** The worksheet's chart: what is known is drawn, named once, in the reader's units, without a style of its own. */
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { attributeOf, elementsOf } from '../../../.ci/html.mjs';
import { ReadingMarks } from '../../../src/figures/stress-plot/ReadingMarks.tsx';
import type { UnitSystem } from '../../../src/units/kinds.ts';
import { Drawing } from '../../../src/worksheet/chart/Drawing.tsx';
import { chartScales } from '../../../src/worksheet/chart/layout.ts';
import type { StressChart } from '../../../src/worksheet/chart/of-results.ts';

const reading = (torque: number, stress: number, inToe: boolean) => ({
  torque,
  stress,
  sdTorque: 0.1,
  sdStress: 2e6,
  inToe,
});

const chart: StressChart = {
  curve: [1, 5, 15].map((torque) => ({
    torque,
    low: torque * 6e6,
    stress: torque * 8e6,
    high: torque * 10e6,
  })),
  readings: [reading(1.5, 20e6, true), reading(5, 34e6, false), reading(5, 36e6, false)],
  lines: {
    whole: [
      { torque: 0.8, stress: 0 },
      { torque: 14.5, stress: 107e6 },
    ],
    throughBothErrors: [
      { torque: 0.8, stress: 2e6 },
      { torque: 14.5, stress: 108e6 },
    ],
  },
  zero: { torque: 0.8, low: -13e6, high: 17e6 },
  setting: { torque: 14.9, stress: 110e6 },
};

const drawn = (shown: StressChart = chart, system: UnitSystem = 'metric') =>
  elementsOf(render(h(Drawing, { chart: shown, system })));
const withClass = (elements: ReturnType<typeof drawn>, name: string) =>
  elements.filter((element) => attributeOf(element, 'class')?.split(' ').includes(name));
const parts = (elements: ReturnType<typeof drawn>) =>
  elements.map((element) => attributeOf(element, 'data-part') ?? attributeOf(element, 'data-sym'));

describe('the chart', () => {
  it('draws every reading with its bars, those in the toe hollow', () => {
    const paths = drawn({ curve: [], readings: chart.readings });
    const countOf = (part: string, sign: RegExp) => {
      const [path] = paths.filter((element) => attributeOf(element, 'data-part') === part);
      return (path && attributeOf(path, 'd')?.match(sign)?.length) ?? 0;
    };
    const points = {
      hollow: countOf('toe', /a3 3 0 1 0 6 0/g),
      full: countOf('line', /a3 3 0 1 0 6 0/g),
    };
    expect(points).toEqual({ hollow: 1, full: 2 });
    expect({ along: countOf('bars', /h/g), up: countOf('bars', /V/g) }).toEqual({
      along: 3,
      up: 3,
    });
  });

  it('draws an arrowhead without bars for a reading off the plot', () => {
    const within = { curve: [], readings: chart.readings };
    const scales = chartScales(within, 'metric');
    const off = render(
      h(ReadingMarks, {
        scales,
        readings: [reading(5, 1e10, false)],
      }),
    );
    expect(off).toContain('l-4 7h8z');
    expect(off).not.toContain('V');
  });

  it('draws the prediction, the lines, the zero and the setting', () => {
    expect(parts(drawn())).toEqual(
      expect.arrayContaining([
        'predictedStress',
        'setting',
        'ownEfficiency',
        'zero',
        'measuredStress',
      ]),
    );
    expect(withClass(drawn(), 'steel-line')).toHaveLength(2); // the line, and the zero's bar
    expect(withClass(drawn(), 'hand-line')).toHaveLength(1);
  });

  it('leaves out what is not known', () => {
    const { curve } = chart;
    const known = parts(drawn({ curve, readings: [] })).filter((part) => part !== undefined);
    expect(known).toEqual(['predictedStress', 'measuredStress']);
    expect(withClass(drawn({ curve, readings: [] }), 'steel-line')).toEqual([]);
  });

  it('has its name and its description beside it', () => {
    const [svg] = drawn().filter(({ tagName }) => tagName === 'svg');
    expect(svg && attributeOf(svg, 'aria-labelledby')).toBe('chart-finding');
    expect(svg && attributeOf(svg, 'aria-describedby')).toBe('chart-description');
  });

  it.each([
    ['metric', 'N·m', 'MPa'],
    ['us', 'ft·lbf', 'psi'],
  ] as const)('names the units of %s readers on its axes', (system, torque, stress) => {
    const html = render(h(Drawing, { chart, system }));
    expect(html).toContain(`torque on the wrench, ${torque}`);
    expect(html).toContain(`stress, ${stress}`);
  });

  it('brings no style with it, so that a strict policy holds', () => {
    expect(drawn().filter((element) => attributeOf(element, 'style') !== undefined)).toEqual([]);
  });
});

describe('the axes', () => {
  it.each(['metric', 'us'] as const)('hold everything, in %s', (system) => {
    const { torqueEnds, stressEnds } = chartScales(chart, system);
    expect(torqueEnds[0]).toBe(0);
    expect(torqueEnds[1]).toBeGreaterThanOrEqual(15);
    expect(stressEnds[0]).toBeLessThanOrEqual(-13e6);
    expect(stressEnds[1]).toBeGreaterThanOrEqual(150e6);
  });

  it('end at round numbers of the unit shown', () => {
    const { torqueEnds, stressEnds } = chartScales(chart, 'metric');
    expect([...torqueEnds, ...stressEnds].map((end) => Number(end.toPrecision(9)))).toEqual([
      0, 16, -20e6, 160e6,
    ]);
  });

  it('have a length before there is anything to show', () => {
    const { x, y, torqueEnds, stressEnds } = chartScales({ curve: [], readings: [] }, 'metric');
    expect([...torqueEnds, ...stressEnds]).toEqual([0, 1, 0, 1e6]);
    expect([x(0), y(0)].every(Number.isFinite)).toBe(true);
  });
});

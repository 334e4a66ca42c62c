import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { figure } from '../../../src/lessons/theory-meets-measurement/comparison.figure.tsx';
import { figure as intercept } from '../../../src/lessons/theory-meets-measurement/intercept.figure.tsx';
import { theoryMeetsMeasurement as model } from '../../../src/lessons/theory-meets-measurement/model.ts';
import { figure as sheets } from '../../../src/lessons/theory-meets-measurement/sheets.figure.tsx';
import type { Figure, State } from '../../../src/lessons/theory-meets-measurement/state.ts';
import { defaults, evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';

/** What a figure finds, with its spaces plain. */
function found({ finding }: Figure, inputs: Partial<InputsOf<typeof model>> = {}): string {
  const values = evaluated(model, inputsAt(model, inputs, 'metric'));
  const state: State = { values, system: 'metric', narrow: false, idPrefix: 'x' };
  return finding(state).replaceAll(/[\u00a0\u202f]/g, ' ');
}

describe('the comparison', () => {
  it('compares theory and measurement while the line has not been touched', () => {
    const { agreement } = evaluated(model, defaults(model));
    expect(Math.abs(agreement)).toBeLessThanOrEqual(1);
    expect(found(figure)).toBe(
      'Predicted 117 MPa, measured 107 MPa. The agreement number is −0.30: they agree.',
    );
  });
  it('calls a line that fits a fit, and counts the readings that another misses', () => {
    expect(found(figure, { efficiency: 0.288 })).toMatch(
      /all 8 filled readings, .* no longer test/,
    );
    expect(found(figure, { efficiency: 0.25 })).toMatch(
      /^At 25 % .* misses the error bars of \d of the 8/,
    );
  });
  it('gives the own efficiency with its interval once the fit is shown', () =>
    expect(found(figure, { shown: 'fit' })).toMatch(/efficiency of 28.8 ± 5.3 %/));
});

describe('what is off a scale', () => {
  const drawn = (efficiency: number) => {
    const values = evaluated(model, inputsAt(model, { efficiency }, 'metric'));
    const state: State = { values, system: 'metric', narrow: false, idPrefix: 'x' };
    return render(h(figure.Drawing, state)).replaceAll(/[\u00a0\u202f]/g, ' ');
  };
  const arrows = (drawing: string) => drawing.match(/l-4 -?7h8z/g)?.length ?? 0;

  it('is an arrowhead for each reading, and counted, with the furthest', () => {
    const drawing = drawn(model.inputs.efficiency.min);
    const [, count, most] = /(\d+) off this scale, by up to (\d+) MPa/.exec(drawing) ?? [];
    expect(arrows(drawing)).toBe(Number(count));
    const { lineStress, measuredStress } = evaluated(model, {
      ...defaults(model),
      efficiency: model.inputs.efficiency.min,
    });
    expect(Math.abs(Number(most) * 1e6 - (measuredStress - lineStress))).toBeLessThan(5e6);
  });
  it('is nothing while the line is near the readings', () => {
    const drawing = drawn(0.288);
    expect(arrows(drawing)).toBe(0);
    expect(drawing).not.toContain('off this scale');
  });
});

describe('the sheets', () => {
  it.each([
    ['first', 'nothing', 'agreement number −1.41, so prediction and readings do not agree.'],
    ['first', 'dryThread', 'agreement number −0.09, and everything else fits.'],
    ['first', 'forgottenStrand', 'agreement number 0.85, yet efficiency does not fit.'],
    ['fourth', 'dryThread', 'agreement number 0.22, yet efficiency and lead do not fit.'],
  ] as const)('the %s sheet under the reason %s: %s', (sheet, reason, end) =>
    expect(found(sheets, { sheet, reason }).endsWith(end)).toBe(true),
  );
});

describe('the intercept', () => {
  it('puts the zero below the first reading or above it, by the no-load torque', () => {
    expect(found(intercept)).toContain('the zero is 0.050 mm below the first reading');
    expect(found(intercept, { assumedDrag: 5 })).toContain('0.015 mm above the first reading');
  });
});

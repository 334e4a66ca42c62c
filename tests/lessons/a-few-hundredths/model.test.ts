/** What goes wrong on the rig, and what makes the stress uncertain, against figures worked by hand (derived here). */
import { describe, expect, it } from 'vitest';
import { CAUSES, uncertainty } from '../../../src/lessons/a-few-hundredths/budget/causes.ts';
import { BARS_TRIED, CHANGES } from '../../../src/lessons/a-few-hundredths/budget/plans.ts';
import { typical } from '../../../src/lessons/a-few-hundredths/budget/typical.worked.ts';
import { aFewHundredths as model } from '../../../src/lessons/a-few-hundredths/model.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';

const at = (inputs: Partial<InputsOf<typeof model>>) =>
  evaluated(model, inputsAt(model, inputs, 'metric'));
const DEGREE = Math.PI / 180;

describe('the rig', () => {
  it.each([
    [{ fault: 'angle', angle: 3 * DEGREE }, -0.392e6], // 1.3 · sin² 3° of 110 MPa
    [{ fault: 'hand', bar: 'steel', warming: 3 }, -7.0725e6], // 205 GPa · 11.5e-6 · 3
    [{ fault: 'hand', bar: 'aluminium', warming: 3 }, -14.145e6],
    [{ fault: 'hand', bar: 'wood', warming: 3 }, -2.46e6],
    [{ fault: 'sun', bar: 'steel', warming: 15 }, 0],
    [{ fault: 'sun', bar: 'aluminium', warming: 1 }, -2.3575e6],
    [{ fault: 'sun', bar: 'wood', warming: 1 }, 1.5375e6],
    [{ fault: 'slip', slip: 2e-5 }, 10.25e6], // 205 GPa · 0.02/400
  ] as const)('with %j feigns %f Pa', (inputs, feigned) => {
    const { feignedStress, saidStress, rigStress, rigShown, rigStretch, feignedStretch } =
      at(inputs);
    expect(Math.abs(feignedStress - feigned)).toBeLessThan(500);
    expect(saidStress).toBeCloseTo(rigStress + feignedStress, 3);
    expect(rigShown).toBeCloseTo(rigStretch + feignedStretch, 15);
  });

  it('has one fault at a time', () => {
    const { feignedStress } = at({ fault: 'slip', slip: 0, warming: 15, angle: 4 * DEGREE });
    expect(feignedStress).toBeCloseTo(0, 6);
  });
});

describe('the budget', () => {
  it('adds by squares', () => {
    for (const change of CHANGES) {
      const { parts, whole } = uncertainty(0.5, change);
      expect(whole ** 2).toBeCloseTo(
        CAUSES.reduce((sum, cause) => sum + parts[cause] ** 2, 0),
        0,
      );
      const { byLine, byDial, byRest, ...together } = at({ barLength: 0.5, change });
      expect(together.whole).toBeCloseTo(Math.hypot(byLine, byDial, byRest), 3);
    }
  });

  it('is what was worked out at the bars that were tried, and runs on between them', () => {
    for (const [place, bar] of BARS_TRIED.entries()) {
      const budget = typical['none']?.[place];
      const share = (budget?.coverageFactor ?? 0) * (budget?.shares['stretch'] ?? 0);
      expect(uncertainty(bar, 'none').parts.line / 110e6).toBeCloseTo(share, 9);
    }
    const [short, middle, long] = [0.4, 0.47, 0.55].map((bar) => uncertainty(bar, 'none').whole);
    expect(middle).toBeLessThan(short as number);
    expect(middle).toBeGreaterThan(long as number);
  });

  it('is largest from the scatter, and gains most from a longer bar and more series', () => {
    const whole = (inputs: Parameters<typeof at>[0]) => at(inputs).whole;
    const start = whole({});
    expect(start / 110e6).toBeGreaterThan(0.13);
    expect(start / 110e6).toBeLessThan(0.17);
    const [longer, series] = [whole({ barLength: 0.8 }), whole({ change: 'threeSeries' })];
    const [finer, later] = [whole({ change: 'finerDial' }), whole({ change: 'laterStart' })];
    for (const good of [longer, series]) expect(good).toBeLessThan(0.75 * start);
    for (const poor of [finer, later]) expect(poor).toBeGreaterThan(0.85 * start);
    expect(Math.max(finer, later)).toBeLessThan(1.02 * start);
  });

  it('with a part halved falls as that part rules', () => {
    const { withLineHalved, withDialHalved, withRestHalved, whole } = at({});
    expect(withLineHalved).toBeLessThan(withDialHalved);
    expect(withDialHalved).toBeLessThan(withRestHalved);
    expect(withRestHalved).toBeLessThan(whole);
  });
});

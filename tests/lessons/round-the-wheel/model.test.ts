/**
 * What the lesson claims of bands on wheels: against the derived figures of the invented mills, against published ways of
 * reckoning, and at the limits that its sliders reach.
 */
import { describe, expect, it } from 'vitest';
import { bandSteel, edgeFactor, lifeExponent } from '../../../src/core/assumptions.ts';
import { bendingStress, swtLifeRatio } from '../../../src/core/wheel.ts';
import { asked, roundTheWheel as model } from '../../../src/lessons/round-the-wheel/model.ts';
import { relativeLife } from '../../../src/lessons/round-the-wheel/relative-life.ts';
import { defaults, evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';
import { numberAt } from '../../published/cases.ts';
import { derivedMills } from '../../published/derived-cases.ts';
import { mills } from '../../published/mills/mill.ts';
import { runningFigures } from '../../published/mills/running.ts';

type Inputs = Partial<InputsOf<typeof model>>;

const at = (inputs: Inputs) => evaluated(model, inputsAt(model, inputs, 'metric'));
const corners = ([0.35, 1.1] as const).flatMap((wheelDiameter) =>
  ([0.6e-3, 1.3e-3] as const).flatMap((thickness) =>
    ([60e6, 200e6] as const).map((tension) => ({ wheelDiameter, thickness, tension })),
  ),
);

/** A worked figure of a mill. */
function figureOf(letter: string, name: string): number {
  const mill = mills[letter];
  if (!mill) throw new Error(`there is no mill ${letter}`);
  return runningFigures(mill)[name] ?? Number.NaN;
}

describe('Ottersleigh as set, mill A of the derived figures', () => {
  it.each([
    ['bending', 'sigma_b smaller wheel (MPa)', 1e6],
    ['peak', 'peak stress, bending x 1.05 (MPa)', 1e6],
    ['range', 'stress range per wheel pass (MPa)', 1e6],
    ['bends', 'bending cycles per hour', 1],
    ['centrifugal', 'rho v^2 (MPa)', 1e6],
    ['share', 'eta', 1],
    ['perThickness', 'D/t smaller wheel', 1],
    ['meanFactor', 'mean wide-strip factor', 1],
    ['looseEdgeFactor', 'outer-edge factor, band not pressed down', 1],
  ] as const)('has its %s', (name, figure, unit) => {
    const theirs = figureOf('A', figure) * unit;
    expect(Math.abs(at(asked)[name] / theirs - 1)).toBeLessThan(1e-8);
  });

  it('pulls its strands as hard as there', () => {
    const { tightStress, slackStress } = at(asked);
    const area = mills['A']?.area ?? 0;
    expect((tightStress * area) / figureOf('A', 'T1 tight (N)')).toBeCloseTo(1, 8);
    expect((slackStress * area) / figureOf('A', 'T2 slack (N)')).toBeCloseTo(1, 8);
  });

  it('is asked about at 3.6 times the tension', () =>
    expect(at(asked).bendTimes).toBeCloseTo(393.474 / 110, 4));
});

describe('the other mills', () => {
  const times = (letter: string) =>
    (1e6 * figureOf(letter, 'sigma_b smaller wheel (MPa)')) /
    numberAt(derivedMills[letter]?.inputs, 'target');

  it('bend between the two that are named', () => {
    const all = Object.keys(mills).map(times);
    const { leastTimes, mostTimes } = at({});
    expect(Math.min(...all) / leastTimes).toBeCloseTo(1, 8);
    expect(Math.max(...all) / mostTimes).toBeCloseTo(1, 8);
  });

  it('have two wheels of unequal size in C, whose smaller does most of the wear', () => {
    const { smallBend, largeBend, smallShareLow, smallShareHigh } = at({});
    expect(smallBend / 1e6 / figureOf('C', 'sigma_b smaller wheel (MPa)')).toBeCloseTo(1, 8);
    expect(largeBend).toBeLessThan(smallBend);
    expect(smallShareLow).toBeGreaterThan(0.8);
    expect(smallShareHigh).toBeGreaterThan(smallShareLow);
  });
});

describe('published ways of reckoning', () => {
  it('give the wide-strip limit of Shigley, 17-3: 1/(1 − ν²), which no saw band reaches', () => {
    const { wideFactor, meanFactor } = at({});
    expect(wideFactor).toBeCloseTo(1 / (1 - bandSteel.poissonsRatio ** 2), 6);
    expect(meanFactor).toBeLessThan(1 + (wideFactor - 1) / 2);
  });

  it('add the centrifugal stress ρ·v² of Shigley, 17-2, whatever the wheel', () => {
    for (const wheelDiameter of [0.35, 1.1])
      expect(at({ speed: 30, wheelDiameter }).centrifugal).toBeCloseTo(7850 * 900, 6);
  });

  it('rank life by peak times half swing, Dowling 9.7: a tenth more tension costs 9 %, thickness 54 %', () => {
    const still = { ...asked, speed: 0, power: 0, change: 0.1 };
    const { tensionLife, thicknessLife } = at(still);
    expect(1 - tensionLife).toBeCloseTo(0.09, 2);
    expect(1 - thicknessLife).toBeCloseTo(0.54, 2);
    const bend = (thickness: number) =>
      edgeFactor * bendingStress({ ...bandSteel, thickness, wheelDiameter: 0.52 });
    const cycle = (thickness: number) => ({
      peak: 110e6 + bend(thickness),
      amplitude: bend(thickness) / 2,
    });
    expect(thicknessLife).toBeCloseTo(swtLifeRatio(cycle(1.1e-3), cycle(1e-3), 9), 12);
  });
});

describe('the limits', () => {
  it('leave no bend on an endless wheel, and tension alone through the thickness', () => {
    for (const corner of corners) {
      const { shownBending, outerStress, innerStress } = at({ ...corner, over: 'endless' });
      expect(shownBending).toBe(0);
      expect(outerStress).toBe(corner.tension);
      expect(innerStress).toBe(corner.tension);
    }
  });

  it('are those of the core: the bend falls as one over the wheel’s size, to nothing', () => {
    const bend = (wheelDiameter: number) =>
      bendingStress({ ...bandSteel, thickness: 1e-3, wheelDiameter });
    for (const size of [1e3, 1e6, 1e12]) expect((bend(size) * size) / 205e6).toBeCloseTo(1, 5);
  });

  it('leave no centrifugal share, no bends and no pull of a cut at rest', () => {
    for (const corner of corners) {
      const still = at({ ...corner, speed: 0, power: 15e3 });
      expect(still.centrifugal).toBe(0);
      expect(still.runAdds).toBeCloseTo(0, 6);
      expect(still.bends).toBe(0);
      expect(still.cutAdds).toBe(0);
      expect(still.isSlipping).toBe(0);
      expect(still.peak).toBeCloseTo(corner.tension + still.edgeBend, 0);
    }
  });

  it('change no life where nothing is changed', () => {
    const { thicknessLife, tensionLife, wheelLife } = at({ change: 0 });
    for (const life of [thicknessLife, tensionLife, wheelLife]) expect(life).toBeCloseTo(1, 12);
  });

  it('hold the cut to what the driving wheel can grip', () => {
    const { isSlipping, slackStress, tightStress, runAdds } = at({ speed: 1, power: 15e3 });
    expect(isSlipping).toBe(1);
    expect(slackStress).toBeGreaterThan(0);
    expect((tightStress + slackStress) / 2).toBeCloseTo(80e6 + runAdds, 0);
    expect(at({}).isSlipping).toBe(0);
  });
});

describe('relative life', () => {
  const { over: _, place: __, change: ___, exponent: ____, ...setting } = defaults(model);

  it('loses more to thickness than to tension, at every exponent and in every corner', () => {
    for (const corner of corners)
      for (const exponent of [lifeExponent.low, lifeExponent.usual, lifeExponent.high]) {
        const lives = (['thickness', 'tension'] as const).map((what) =>
          relativeLife({ ...setting, ...corner }, what, 0.1, exponent),
        );
        expect(lives[0]).toBeLessThan(lives[1] ?? 0);
        expect(lives[1]).toBeLessThan(1);
      }
  });

  it('gains on larger wheels about what it loses to thickness', () => {
    const { thicknessLife, wheelLife } = at({});
    expect(wheelLife * thicknessLife).toBeGreaterThan(0.95);
    expect(wheelLife * thicknessLife).toBeLessThan(1.05);
  });

  it('stays within the scale of the figure, three doublings either way', () => {
    for (const corner of corners)
      for (const change of [-0.15, 0.15])
        for (const speed of [0, 40]) {
          const now = at({ ...corner, change, speed, exponent: lifeExponent.high });
          for (const life of [now.thicknessLife, now.tensionLife, now.wheelLife])
            expect(Math.abs(Math.log2(life))).toBeLessThan(3);
        }
  });
});

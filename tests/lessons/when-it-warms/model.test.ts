/** What the lesson works out, held against the mills that other code has worked out, and at the ends of its sliders. */
import { describe, expect, it } from 'vitest';
import { day, GRIPS, NAMED, warmthAt } from '../../../src/lessons/when-it-warms/day/hours.ts';
import { asides, mill } from '../../../src/lessons/when-it-warms/mill.worked.ts';
import { whenItWarms as model } from '../../../src/lessons/when-it-warms/model.ts';
import { drift, supportShare, type Tensioner } from '../../../src/lessons/when-it-warms/warmth.ts';
import { defaults, evaluated, type InputsOf } from '../../../src/models/define-model.ts';
import { derivedCases } from '../../published/derived-cases.ts';

type Inputs = Partial<InputsOf<typeof model>>;
const at = (inputs: Inputs) => evaluated(model, { ...defaults(model), ...inputs });
const TENSIONERS: readonly Tensioner[] = ['rigid', 'screw', 'spring', 'oil'];

/** A figure of mill A as other code has worked it out, in MPa. */
function printed(figure: string): number {
  const found = derivedCases.find(({ name }) => name === `mill A: ${figure} (MPa)`);
  return Number(found?.expected);
}

describe('the first hour', () => {
  it('takes from Ottersleigh what other code found for mill A', () => {
    const expected = printed('stress change, band +15 K, this support');
    expect(-at({ bandWarm: 15 }).firstLoss / 1e6).toBeCloseTo(expected, 7);
    expect(-at({ warmer: 15, tensioner: 'screw' }).checkLoss / 1e6).toBeCloseTo(expected, 7);
    expect(at({ bandWarm: 15 }).firstShare).toBeCloseTo(-expected / 110, 9);
  });
  it('takes nothing from a band that stays cold', () => {
    expect(at({ bandWarm: 0 }).firstLoss).toBe(0);
    expect(at({ bandWarm: 0 }).firstStress).toBe(mill.setting);
  });
});

describe('the ends of what can hold the wheel', () => {
  it('nothing gives: −E·α·ΔT, as other code found it', () => {
    const { checkLoss, rigidLoss } = at({ warmer: 15, tensioner: 'rigid' });
    expect(-checkLoss / 1e6).toBeCloseTo(printed('same, rigid support'), 7);
    expect(checkLoss).toBeCloseTo(rigidLoss, 3);
    expect(supportShare('rigid')).toBe(1);
  });
  it('constant pressure: nothing, whatever warms', () => {
    for (const warmer of [-20, 30])
      expect(at({ warmer, tensioner: 'oil' }).checkLoss).toBeCloseTo(0, 9);
    expect(supportShare('oil')).toBe(0);
  });
  it('the softer it is, the less it takes', () => {
    const losses = TENSIONERS.map((tensioner) => at({ tensioner }).checkLoss);
    expect(losses).toEqual([...losses].sort((a, b) => b - a));
    expect(new Set(losses).size).toBe(losses.length);
  });
  it('is the share of the formula', () => {
    for (const tensioner of ['rigid', 'screw', 'spring', 'oil'] as const) {
      const { checkLoss, rigidLoss, supportShare: share } = at({ tensioner });
      expect(checkLoss).toBeCloseTo(rigidLoss * share, 3);
    }
  });
});

describe('the three thermometers', () => {
  it.each([-20, 30])('change nothing if all of them show %d', (warmth) => {
    const { changeNow } = at({ bandNow: warmth, frameNow: warmth, wheelsNow: warmth });
    expect(Math.abs(changeNow)).toBeLessThan(0.05e6); // the band runs half its thickness outside the rims
  });
  it('account for the slack: the band’s gain less what frame and wheels take up', () => {
    const { bandGain, frameTakes, wheelsTake, slackNow } = at({ frameNow: 12, wheelsNow: -3 });
    expect(frameTakes).toBeCloseTo(11.5e-6 * 12 * 1.35, 12);
    expect(wheelsTake).toBeCloseTo((Math.PI / 2) * 11.5e-6 * -3 * 0.52, 12);
    expect(slackNow).toBeCloseTo(bandGain - frameTakes - wheelsTake, 12);
  });
  it('tighten a band that cools more than its mill', () =>
    expect(at({ bandNow: -20, frameNow: 0, wheelsNow: 0 }).changeNow).toBeGreaterThan(20e6));
});

describe('the day', () => {
  const dragged = { bandWarm: 15, frameWarm: 8, wheelsWarm: 6 };
  it('begins and ends as it was set', () => {
    const hours = day(dragged);
    const none = { band: 0, frame: 0, wheels: 0 };
    expect([hours[0]?.warmth, hours.at(-1)?.warmth]).toEqual([none, none]);
    expect([hours[0]?.at, hours.at(-1)?.at]).toEqual([NAMED.start, NAMED.start + 24]);
  });
  it('has each grip on its curve', () => {
    const inputs = { band: 15, frame: 8, wheels: 6 };
    for (const part of ['band', 'frame', 'wheels'] as const) {
      const hours = day(dragged);
      const after = hours.findIndex(({ at: hour }) => hour >= GRIPS[part]);
      const next = hours[after]?.warmth[part];
      const isThere = hours[after]?.at === GRIPS[part] || hours[after - 1]?.warmth[part] === next;
      expect([part, next, isThere]).toEqual([part, inputs[part], true]);
    }
  });
  it('gives some of it back by lunch, and is above the setting once the band is cool', () => {
    const { firstStress, lunchStress, duskStress, frostStress, setting } = at({});
    expect(lunchStress).toBeGreaterThan(firstStress);
    expect(lunchStress).toBeLessThan(setting);
    expect(duskStress).toBeGreaterThan(setting);
    expect(frostStress).toBeGreaterThan(setting);
  });
  it('moves a spring far less than a screw, and constant pressure not at all', () => {
    const most = (tensioner: Tensioner) =>
      Math.max(...day(dragged).map(({ warmth }) => Math.abs(drift(warmth, tensioner))));
    expect(most('spring')).toBeLessThan(most('screw') / 5);
    expect(most('oil')).toBeCloseTo(0, 9);
  });
  it('knows only the hours that it names', () =>
    expect(() => warmthAt('noon' as 'lunch', dragged)).toThrow('noon must be an hour of the day'));
});

describe('what is told beside', () => {
  it('oil at Dunmarrow, by hand: 1.6 GPa on 1256.6 mm² over 60 mm, 0.42 mm for 10 K', () => {
    expect(asides.oilStiffness / 1e6).toBeCloseTo(33.51, 2);
    expect(asides.oilPush).toBeCloseTo(0.42e-3, 12);
    // 0.42 mm against 6.953, 33.510 and 12 MN/m in a row, on two strands of 52.5 mm²
    expect(asides.oilStress / 1e6).toBeCloseTo(15.563, 2);
  });
  it('bars: none for steel, less for aluminum, more for wood', () => {
    expect(asides.steelBar).toBe(0);
    expect(asides.aluminiumBar / 1e6).toBeCloseTo(-7.0725, 6);
    expect(asides.woodenBar / 1e6).toBeCloseTo(4.6125, 6);
  });
});

import { describe, expect, it } from 'vitest';
import { type DayResult, emptyWorksheet, type WindowResult } from '../../../src/core/worksheet.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import {
  allEdges,
  bindingEdges,
  checkWords,
  targetInWindow,
  windowRange,
} from '../../../src/worksheet/words/window-words.ts';

const metric = shownIn('metric');
const { demands } = emptyWorksheet;
const straightness = { cause: 'straightness', stress: 64e6 } as const;
const grip = { cause: 'grip', stress: 22e6 } as const;
const life = { cause: 'life', stress: 127e6 } as const;
const bandMaker = { cause: 'bandMaker', stress: 120e6 } as const;
const open: WindowResult = {
  low: straightness,
  high: life,
  isOpen: true,
  lows: [straightness, grip],
  highs: [life],
  waitsFor: [],
};
const plain = (text: string | undefined) => text?.replaceAll(/[\u2009\u202f\u00a0]/g, ' ');

describe('the window in words', () => {
  it('is a range, or open on a side, or shut', () => {
    expect(plain(windowRange(open, metric))).toBe('64 to 127 MPa');
    expect(plain(windowRange({ ...open, high: undefined }, metric))).toBe('from 64.0 MPa up');
    expect(plain(windowRange({ ...open, low: undefined }, metric))).toBe('up to 127 MPa');
    expect(windowRange({ ...open, isOpen: false }, metric)).toBe('shut');
  });

  it('says of each edge that binds why, by what was granted, and what moves it', () => {
    const [low, high] = bindingEdges(open, demands, metric).map(plain);
    expect(low).toMatch(
      /^At least 64.0 MPa: below it a push of 30 N moves the teeth more than 4 mm\./,
    );
    expect(high).toMatch(
      /^At most 127 MPa: above it the band would last less than 80 % as long as at today’s setting, with a life exponent of 9\./,
    );
    expect(high).toContain('cannot say how many hours');
  });

  it('puts a maker before everything that is worked out', () => {
    const [, high] = bindingEdges({ ...open, high: bandMaker }, demands, metric);
    expect(high).toMatch(/the band’s maker allows no more\. It comes before anything/);
  });

  it('names nothing where no tension would do', () => {
    const slippery = { ...open, low: { cause: 'grip', stress: Infinity } as const, isOpen: false };
    expect(bindingEdges(slippery, demands, metric)[0]).toContain('No tension is enough');
    expect(targetInWindow(slippery, 110e6)).toContain('No tension serves both ends');
  });

  it('lists all edges, lowest first', () =>
    expect(plain(allEdges(open, metric))).toBe(
      'grip 22.0 MPa, straightness 64.0 MPa, life 127 MPa',
    ));

  it('tells where a target lies, and says it lies inside only where both edges are known', () => {
    expect(targetInWindow(open, 110e6)).toContain('in the window');
    expect(targetInWindow(open, 130e6)).toContain('above');
    expect(targetInWindow(open, 60e6)).toContain('below');
    expect(targetInWindow(open, undefined)).toBeUndefined();
    expect(targetInWindow({ ...open, low: undefined }, 110e6)).toBeUndefined();
  });
});

describe('a check over the day in words', () => {
  const cold = { stress: 110e6, torque: 14 };
  const warmLeast = { stress: 75e6, torque: 10 };
  const day: DayResult = { cold, warmLeast, warmMost: cold, warming: 15, isSupportKnown: false };

  it('tells what a warm band shows before the setting, so that no one turns the handle to it', () => {
    const range = checkWords(day, metric);
    expect(plain(range.warm)).toBe('A warm band may show as little as 10.0 N·m: leave it.');
    expect(plain(range.cold)).toBe('That is for a band set once, cold, to 14.0 N·m.');
    expect(range.why).toContain('count turns');
    expect(plain(range.why)).toContain('it carries 75 to 110 MPa');
    const known = checkWords({ ...day, warmMost: warmLeast, isSupportKnown: true }, metric);
    expect(plain(known.warm)).toBe('A warm band shows about 10.0 N·m: leave it.');
    expect(plain(known.why)).toContain('15 °C warmer than frame and wheels it carries 75.0 MPa');
  });

  it('is in the reader’s units', () =>
    expect(plain(checkWords(day, shownIn('us')).why)).toContain('27 °F warmer'));
});

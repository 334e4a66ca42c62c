/** What is said of plans, with its numbers. */
import { describe, expect, it } from 'vitest';
import { planChanges } from '../../../src/core/plan.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import {
  isBetter,
  offerName,
  PLAN_TROUBLES,
  reachSentence,
  reachText,
  tooHighSentence,
} from '../../../src/worksheet/words/plan-words.ts';

const plan = {
  gaugeLength: 0.4,
  graduation: 1e-5,
  readTo: 1e-5,
  firstShare: 0.2,
  steps: 10,
  series: 1,
};
const known = { median: 0.1, nineOfTen: 0.1309, givesStress: 1 };
const seldom = { median: undefined, nineOfTen: undefined, givesStress: 0.4 };
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

describe('what a plan reaches', () => {
  it('is never said better than it is', () => {
    expect(reachText(known)).toBe('±14 %');
    expect(reachSentence(known)).toContain('know the stress to ±14 % or better');
  });

  it('is how often there is a stress, where one in ten gives none', () => {
    expect(reachSentence(seldom)).toContain('Only 40 of 100');
    expect(reachSentence({ ...seldom, givesStress: 0 })).toMatch(/^No such measurement/);
  });

  it('is better only where it reads so', () => {
    expect(isBetter({ ...known, nineOfTen: 0.1301 }, known)).toBe(false);
    expect(isBetter({ ...known, nineOfTen: 0.1299 }, known)).toBe(true);
    expect(isBetter(known, seldom)).toBe(true);
    expect(isBetter(seldom, known)).toBe(false);
    expect(isBetter({ ...seldom, givesStress: 0.6 }, seldom)).toBe(true);
  });
});

describe('offers', () => {
  it('say what is to be changed, in the reader’s units', () => {
    const names = (system: 'metric' | 'us') =>
      planChanges(plan, 0.6).map(({ change, plan: changed }) =>
        plain(offerName(change, changed, shownIn(system))),
      );
    expect(names('metric')).toEqual([
      'a second series',
      'three series in all',
      'a bar of 600 mm',
      'a dial graduated to 0.005 mm',
      '15 steps in a series',
      'a start at a tenth of the load',
    ]);
    expect(names('us')[2]).toBe('a bar of 23.62 in');
  });
});

describe('what is wrong with a plan', () => {
  it('is said with what would be right', () => {
    expect(PLAN_TROUBLES.steps).toContain('6 to 30');
    expect(PLAN_TROUBLES.series).toContain('1 to 5');
  });
});

describe('a top that is too high', () => {
  const guard = {
    code: 'mayExceedBandLimit',
    level: 'warn',
    values: { highest: 130e6, limit: 120e6 },
    inputs: [],
  } as const;
  const said = (highest: number | undefined) =>
    tooHighSentence({ guard, highest }, 15, shownIn('metric')).replace(/[\u00a0\u202f]/g, ' ');

  it('names the limit and how far to go', () =>
    expect(said(13.67)).toBe(
      'STOP. At 15.0 N·m the stress may be above what the band’s maker allows, 120 MPa. Go no higher than 13.6 N·m: uncertainty included, that stays below.',
    ));

  it('offers no torque where none is safe', () =>
    expect(said(undefined)).toMatch(/No lower torque is safely below it either\.$/));
});

/** What is said of plans, with its numbers. */
import { describe, expect, it } from 'vitest';
import { planChanges } from '../../../src/core/plan.ts';
import type { TopLoadTrouble } from '../../../src/core/worksheet.ts';
import { toSi } from '../../../src/units/si-value.ts';
import type { PlanAnswer } from '../../../src/worksheet/state/answers.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import {
  besideSentence,
  defaultTopSentence,
  haveSentence,
  isBetter,
  offerName,
  PLAN_TROUBLES,
  reachSentence,
  reachText,
  SLOWLY,
  settingTexts,
  settingUnit,
  tooHighSentences,
  topSentence,
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
const calculated = { stress: 110e6, expandedUncertainty: 21e6, by: 'calculation' } as const;
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

describe('what a plan reaches', () => {
  it('is never said better than it is', () => {
    expect(reachText(known)).toBe('±14 %');
    expect(reachSentence(known)).toBe(
      'You would know the stress to ±14 % or better, nine times out of ten.',
    );
  });

  it('is how often there is a stress, where one in ten gives none', () => {
    expect(reachSentence(seldom)).toContain('Only 40 of 100');
    expect(reachSentence({ ...seldom, givesStress: 0 })).toMatch(/^This plan gives no stress/);
  });

  it('stands beside what the readings give already, and says why it may be less', () => {
    expect(haveSentence(0.0634, known)).toBe(
      'Your readings give ±7 % now. The plan promises less because it counts worse days too: nine of ten tries must be as good.',
    );
    expect(haveSentence(0.21, known)).toBe('Your readings give ±21 % now.');
    expect(haveSentence(0.138, known)).toBe('Your readings give ±14 % now.');
    expect(haveSentence(0.21, seldom)).toContain('promises less');
  });

  it('is what its offers are compared with', () => {
    expect(besideSentence(known, 'This plan')).toBe(
      'This plan would reach ±14 %. With one thing changed:',
    );
    expect(besideSentence(seldom, 'This plan')).toContain('a stress in 40 of 100 tries');
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
    expect(names('us').slice(2, 4)).toEqual([
      'a bar of 23.62 in',
      'a dial graduated to about 0.000197 in',
    ]);
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
  const said = (troubles: readonly TopLoadTrouble[], top?: number, system?: 'us') =>
    tooHighSentences({ tooHigh: troubles, at: calculated }, top, shownIn(system ?? 'metric'));
  const sentence = (...given: Parameters<typeof said>) => plain(said(...given)[0]?.sentence ?? '');
  const practice = (stress: number): TopLoadTrouble['guard'] => ({
    code: 'outsideCommonPractice',
    level: 'warn',
    values: { stress, highest: 195e6, low: 60e6, high: 170e6 },
    inputs: [],
  });

  it('names the limit and how far to go', () =>
    expect(sentence([{ guard, highest: 13.67 }], 15)).toBe(
      'STOP. At 15 N·m the stress may be above what the band’s maker allows, 120 MPa. Go no higher than 13.5 N·m: uncertainty included, that stays below.',
    ));

  it('offers no torque where none is safe', () =>
    expect(sentence([{ guard, highest: undefined }], 15)).toMatch(
      /No lower torque is safely below it either\.$/,
    ));

  it('warns of more than is in use, with a lower top', () => {
    const trouble = { guard: practice(180e6), highest: 13.67 };
    expect(sentence([trouble], 20)).toBe(
      'At 20 N·m the stress may reach 195 MPa, uncertainty included. That is more than the 170 MPa that small mills usually use (common practice, no source). Plan a top of 13.5 N·m or less.',
    );
    expect(sentence([trouble], 20, 'us')).toMatch(/At 14\.75 ft·lbf .* 28 300 psi.* 24 700 psi /);
    expect(said([trouble], 20)[0]?.isStop).toBe(false);
  });

  it('says what else would help where only the uncertainty goes so far', () =>
    expect(sentence([{ guard: practice(120e6), highest: 13.67 }], 20)).toMatch(
      /Plan a top of 13\.5 N·m or less, or say more about the screw in part 2\.$/,
    ));

  it('asks for a lower target where the stress is the target', () => {
    const tooHigh = [{ guard: practice(190e6), highest: undefined }];
    const [found] = tooHighSentences({ tooHigh }, undefined, shownIn('metric'));
    expect(plain(found?.sentence ?? '')).toMatch(
      /^Your target, 190 MPa, is more than the 170 MPa .* Choose a lower one in part 8\.$/,
    );
  });

  it('stops once for all limits, at what keeps to the last', () => {
    const mill = { limit: 12e3 };
    const all: readonly TopLoadTrouble[] = [
      { guard, highest: 14 },
      { guard: { ...guard, code: 'aboveMillLimit', level: 'stop', values: mill }, highest: 13 },
      { guard: { ...guard, code: 'beyondYieldShare', level: 'stop', values: {} }, highest: 12 },
    ];
    expect(said(all, 20)).toHaveLength(1);
    expect(sentence(all, 20)).toBe(
      'STOP. At 20 N·m the stress may be above what the band’s maker allows, 120 MPa. The force on the wheel would be above what the mill’s maker allows, 12 000 N. The steel may come too near its yield strength. Go no higher than 12 N·m: uncertainty included, that stays below.',
    );
  });

  it('says in its own words what no load mends', () => {
    const thick = { thickness: 3e-3, wheelDiameter: 0.5 };
    const tooThick = {
      code: 'tooThickForWheel',
      level: 'stop',
      values: thick,
      inputs: [],
    } as const;
    expect(sentence([{ guard: tooThick, highest: undefined }], 20)).toMatch(/3 mm.*500 mm/);
  });

  it('keeps the order in which they count', () => {
    const both = [guard, practice(180e6)].map((each) => ({ guard: each, highest: 13 }));
    expect(said(both, 20).map(({ isStop }) => isStop)).toEqual([true, false]);
  });
});

describe('the top of a plan', () => {
  it('is said with the stress that it gives, and how sure that is', () => {
    const said = (top: number | undefined, at: PlanAnswer['at']) =>
      plain(topSentence({ stressAtTop: 110e6, at }, top, shownIn('metric')) ?? '');
    expect(said(14.5, calculated)).toBe(
      'At 14.5 N·m the band should carry 110 ± 21 MPa, by calculation.',
    );
    expect(said(14.5, { ...calculated, by: 'readings' })).toMatch(/, by your readings\.$/);
    expect(said(14.5, undefined)).toBe('At the top the band should carry your target, 110 MPa.');
    expect(topSentence({}, 14.5, shownIn('metric'))).toBeUndefined();
  });
});

describe('the steps of a plan', () => {
  it('are numbers as they are set, in the reader’s unit', () => {
    const { torques } = { torques: [2.5, 13.5, 20] };
    expect(settingTexts({ torques }, shownIn('metric'))).toEqual(['2.5', '13.5', '20']);
    const pressures = { torques: [1000, 2350].map((psi) => toSi(psi, 'pressure', 'us')) };
    expect(settingTexts(pressures, shownIn('us', 'pressure'))).toEqual(['1000', '2350']);
  });

  it('are in inch-pounds, unit and all, where the wrench has them', () => {
    const wrench = shownIn('us', 'torque', undefined, 'inchTorque');
    const torques = [40, 120].map((inchPounds) => toSi(inchPounds, 'inchTorque', 'us'));
    expect(settingTexts({ torques }, wrench)).toEqual(['40', '120']);
    expect(settingUnit(wrench)).toBe('in·lbf');
    expect(settingUnit(shownIn('us'))).toBe('ft·lbf');
    const troubles: TopLoadTrouble[] = [
      {
        guard: { level: 'stop', code: 'aboveBandLimit', values: { limit: 100e6 }, inputs: [] },
        highest: toSi(97.4, 'inchTorque', 'us'),
      },
    ];
    const [found] = tooHighSentences({ tooHigh: troubles, at: calculated }, torques[1], wrench);
    expect(plain(found?.sentence ?? '')).toMatch(
      /^STOP\. At 120 in·lbf .* no higher than 95 in·lbf/,
    );
  });

  it('are reached as the kind of tensioner is worked', () => {
    expect(SLOWLY.torque).toMatch(/^Turn/);
    expect(SLOWLY.pressure).toMatch(/^Pump/);
  });
});

describe('an empty top', () => {
  it('says how high the plan goes, and why', () => {
    const said = (topFrom: 'use' | 'typed' | 'limits') =>
      plain(defaultTopSentence({ topTorque: 35, topFrom }, shownIn('metric')) ?? 'nothing');
    expect(said('use')).toBe(
      'Left empty, the plan goes up to 35 N·m: the torque that you use now.',
    );
    expect(said('limits')).toContain('so that the limits hold');
    expect(said('typed')).toBe('nothing');
  });
});

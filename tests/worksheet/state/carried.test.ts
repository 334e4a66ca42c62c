/** The bars: both together only where it is narrower than what it is made of. */
import { describe, expect, it } from 'vitest';
import {
  evaluateWorksheet,
  type Worksheet,
  type WorksheetResults,
} from '../../../src/core/worksheet.ts';
import { carriedBy, stressAnswered, testsLittle } from '../../../src/worksheet/state/carried.ts';
import { millA } from '../../core/worksheet/fixtures/mills.ts';

const results = evaluateWorksheet(millA);
type Trials = { readonly low: number; readonly high: number; readonly trials: number };
const routes = (found: WorksheetResults, trials?: Trials) =>
  carriedBy({
    result: (name) => found[name],
    answers: () => ({ prediction: { trials, curve: [] } }),
  }).map(({ route }) => route);

describe('the bars', () => {
  it('end with both together where that is the narrowest', () =>
    expect(routes(results)).toEqual(['predicted', 'measured', 'both']));

  it('leave it out where the prediction by trials is narrower', () => {
    const { predicted, both } = results;
    if (!predicted.ready || !both.ready) throw new Error('not ready');
    const half = 0.9 * both.expandedUncertainty;
    const trials = { low: predicted.stress - half, high: predicted.stress + half, trials: 1 };
    expect(routes(results, trials)).toEqual(['predicted', 'measured']);
  });

  it('show it without a stress by the dial alone only where it narrows the prediction', () => {
    const measured = { ready: false, waitsFor: [] } as const;
    expect(routes({ ...results, measured })).toEqual(['predicted', 'both']);
    const { both } = results;
    if (!both.ready) throw new Error('not ready');
    const wide = { ...both, low: 0, high: 10 * both.stress };
    expect(routes({ ...results, measured, both: wide })).toEqual(['predicted']);
  });
});

const answered = (worksheet: Worksheet) => {
  const found = evaluateWorksheet(worksheet);
  return stressAnswered({
    result: (name) => found[name],
    answers: () => ({}),
    worksheet: () => worksheet,
  });
};

describe('the stress that the sheet answers with', () => {
  it('is by the readings at the torque in use, not at the highest reading', () => {
    const use = { torque: 10, pressure: undefined };
    const { atUse, measured } = evaluateWorksheet({ ...millA, use });
    if (!atUse.ready || !measured.ready) throw new Error('not ready');
    expect(answered({ ...millA, use })).toMatchObject({ torque: 10, stress: atUse.stress });
    expect(atUse.stress).toBeLessThan(measured.stress);
  });

  it('is at the highest reading where no torque in use is said', () => {
    const use = { torque: undefined, pressure: undefined };
    expect(answered({ ...millA, use })?.torque).toBe(14.5);
  });

  it('is the prediction at the torque in use before there are readings', () => {
    const use = { torque: 10, pressure: undefined };
    const before = { ...millA, use, readings: [] };
    const { predicted } = evaluateWorksheet(before);
    if (!predicted.ready) throw new Error('not ready');
    expect(answered(before)).toMatchObject({ torque: 10, stress: predicted.stress });
  });
});

describe('an agreement', () => {
  const tests = (low: number, high: number, found = results) =>
    testsLittle({
      result: (name) => found[name],
      answers: () => ({ prediction: { trials: { low, high, trials: 1 }, curve: [] } }),
    });

  it('tests little where the prediction reaches over more than half as much again', () => {
    expect(tests(100e6, 151e6)).toBe(true);
    expect(tests(100e6, 149e6)).toBe(false);
  });

  it('is none where the two disagree, however wide the prediction', () => {
    const { agreement } = results;
    if (!agreement.ready) throw new Error('not ready');
    const apart = { ...results, agreement: { ...agreement, verdict: 'measuredLower' as const } };
    expect(tests(50e6, 500e6, apart)).toBe(false);
  });
});

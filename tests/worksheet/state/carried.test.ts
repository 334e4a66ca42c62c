/** The bars: both together only where it is narrower than what it is made of. */
import { describe, expect, it } from 'vitest';
import {
  evaluateWorksheet,
  type Worksheet,
  type WorksheetResults,
} from '../../../src/core/worksheet.ts';
import { curveTorques } from '../../../src/worksheet/chart/torques.ts';
import {
  carriedBy,
  stressAnswered,
  testsLittle,
  torqueAtHand,
} from '../../../src/worksheet/state/carried.ts';
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

const PRESSURE = { pressure: undefined };
const using = (torque: number | undefined): Worksheet => ({
  ...millA,
  use: { torque, ...PRESSURE },
});
const asked = (worksheet: Worksheet, found = evaluateWorksheet(worksheet)) => ({
  result: <Name extends keyof WorksheetResults>(name: Name) => found[name],
  answers: () => ({}),
  worksheet: () => worksheet,
});
const spanOf = (route: string, worksheet: Worksheet) =>
  carriedBy(asked(worksheet)).find((carried) => carried.route === route)?.span;

describe('the stress that the sheet answers with', () => {
  it('is at the torque in use, not at the highest reading', () => {
    const { bothAtUse, measured } = evaluateWorksheet(using(10));
    if (!bothAtUse.ready || !measured.ready) throw new Error('not ready');
    const { stress, low, high } = bothAtUse;
    expect(stressAnswered(asked(using(10)))).toMatchObject({ torque: 10, stress, low, high });
    expect(stress).toBeLessThan(measured.stress);
  });

  it('is what the last bar shows, with and without a torque in use', () => {
    for (const worksheet of [using(10), using(undefined)]) {
      const sheet = asked(worksheet);
      expect(stressAnswered(sheet)).toMatchObject(carriedBy(sheet).at(-1)?.span ?? {});
    }
  });

  it('is at the highest reading where no torque in use is said, or one that does not pull', () => {
    expect(stressAnswered(asked(using(undefined)))?.torque).toBe(14.5);
    expect(stressAnswered(asked(using(0.5)))?.torque).toBe(14.5);
  });

  it('is the prediction at the torque in use before there are readings', () => {
    const before = { ...using(10), readings: [] };
    const { predicted } = evaluateWorksheet(before);
    if (!predicted.ready) throw new Error('not ready');
    expect(stressAnswered(asked(before))).toMatchObject({ torque: 10, stress: predicted.stress });
  });
});

describe('the bars at a torque in use', () => {
  it('are all about that torque', () => {
    const { atUse, predictedAtUse } = evaluateWorksheet(using(10));
    if (!atUse.ready || !predictedAtUse.ready) throw new Error('not ready');
    expect(spanOf('measured', using(10))?.stress).toBe(atUse.stress);
    expect(spanOf('predicted', using(10))?.stress).toBe(predictedAtUse.stress);
    expect(torqueAtHand(asked(using(10)))).toBe(10);
  });

  it('take the prediction’s ends where the chart draws them', () => {
    const found = evaluateWorksheet(using(10));
    const torques = curveTorques(found);
    expect(torques).toContain(10);
    const point = { torque: 10, low: 1, stress: 2, high: 3 };
    const sheet = {
      ...asked(using(10), found),
      answers: () => ({ prediction: { trials: undefined, curve: [point] } }),
    };
    expect(carriedBy(sheet)[0]).toMatchObject({ route: 'predicted', span: { low: 1, high: 3 } });
  });

  it('stay at the highest reading where only both together tell a stress, and that there', () => {
    const found = evaluateWorksheet(using(10));
    const measured = { ready: false, waitsFor: [] } as const;
    expect(torqueAtHand(asked(using(10), { ...found, measured, atUse: measured }))).toBe(14.5);
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

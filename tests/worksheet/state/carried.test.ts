/** The bars: both together only where it is narrower than what it is made of. */
import { describe, expect, it } from 'vitest';
import { evaluateWorksheet, type WorksheetResults } from '../../../src/core/worksheet.ts';
import { carriedBy } from '../../../src/worksheet/state/carried.ts';
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

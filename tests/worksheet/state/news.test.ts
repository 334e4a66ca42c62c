/** Results that are sent in part arrive whole. */
import { describe, expect, it } from 'vitest';
import { emptyWorksheet, evaluateWorksheet, type Worksheet } from '../../../src/core/worksheet.ts';
import { newsOnly, wholeAgain } from '../../../src/worksheet/state/news.ts';

const START: Worksheet = {
  ...emptyWorksheet,
  band: { ...emptyWorksheet.band, bodyWidth: 0.03, thickness: 0.001 },
};
const SHEETS: readonly Worksheet[] = [
  START,
  { ...START, target: { ...START.target, stress: 110e6 } },
  { ...START, target: { ...START.target, stress: undefined } },
  emptyWorksheet,
  START,
];

describe('results on their way', () => {
  it('arrive as they were worked out, sheet after sheet', () => {
    const [send, take] = [newsOnly(), wholeAgain()];
    for (const sheet of SHEETS) {
      const results = evaluateWorksheet(sheet);
      const taken = take(structuredClone(send({ results: structuredClone(results) })));
      expect(taken.results).toEqual(results);
    }
  });

  it('of a target that changed have the parts that hang on it alone', () => {
    const send = newsOnly();
    const [first, second] = SHEETS.map((sheet) => evaluateWorksheet(sheet));
    const all = Object.keys(send({ results: first }).results ?? {});
    const some = Object.keys(send({ results: second }).results ?? {});
    expect(all).toEqual(Object.keys(first ?? {}));
    expect(some).toContain('setting');
    expect(some).not.toContain('points');
  });

  it('of a sheet that says the same are none', () => {
    const send = newsOnly();
    send({ results: evaluateWorksheet(START) });
    expect(send({ results: evaluateWorksheet(START) }).results).toEqual({});
  });

  it('lose a part that is no longer there', () => {
    const [send, take] = [newsOnly(), wholeAgain()];
    const results = evaluateWorksheet(START);
    take(send({ results: { ...results, dialRuns: { backwards: true, isSaid: true } } }));
    expect(take(send({ results })).results).toEqual(results);
  });

  it('leave other answers as they are', () => {
    const prediction = { trials: undefined, curve: [] };
    expect(wholeAgain()(newsOnly()({ prediction }))).toEqual({ prediction });
  });
});

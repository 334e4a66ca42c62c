import { describe, expect, it } from 'vitest';
import { isApart } from '../../../../src/core/worksheet/decide/apart.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { millA } from '../fixtures/mills.ts';

describe('isApart', () => {
  it('is said only where calculation and measurement are both there and do not agree', () => {
    const { agreement } = evaluateWorksheet(millA);
    expect(agreement).toMatchObject({ ready: true, verdict: 'agree' });
    expect(isApart({ agreement })).toBe(false);
    expect(isApart(evaluateWorksheet({ ...millA, readings: [] }))).toBe(false);
    expect(isApart({ agreement: undefined })).toBe(false);
    for (const factor of [0.4, 3]) {
      const dial = (reading?: number) => 0.1 + factor * ((reading ?? 0.1) - 0.1);
      const readings = millA.readings.map((each) => ({ ...each, dial: dial(each.dial) }));
      expect(isApart(evaluateWorksheet({ ...millA, readings }))).toBe(true);
    }
  });
});

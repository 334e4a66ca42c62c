import { describe, expect, it } from 'vitest';
import { evaluateWorksheet } from '../../../src/core/worksheet.ts';
import { numbersOf, refusalOf } from '../fixtures/ready.ts';
import { millA } from './fixtures/mills.ts';

const used = (torque: number | undefined) => evaluateWorksheet({ ...millA, use: { torque } });

describe('worksheetAtUse', () => {
  it('is what stands at the highest reading where that is the torque in use', () => {
    const top = used(14.5);
    const { stress } = numbersOf(top.measured);
    expect(numbersOf(top.atUse).stress / stress).toBeCloseTo(1, 12);
    expect(numbersOf(top.predictedAtUse)).toEqual(numbersOf(top.predicted));
  });

  it('goes down in step with the torque above the no-load torque', () => {
    const { atUse, measured, predicted, predictedAtUse } = used(10);
    const share = (10 - 0.8) / (14.5 - 0.8);
    expect(numbersOf(atUse).stress / numbersOf(measured).stress).toBeCloseTo(share, 12);
    expect(numbersOf(predictedAtUse).stress / numbersOf(predicted).stress).toBeCloseTo(share, 12);
  });

  it('joins the two there by their weights', () => {
    const { atUse, predictedAtUse, bothAtUse } = used(10);
    const [measured, predicted] = [numbersOf(atUse), numbersOf(predictedAtUse)];
    const [a, b] = [measured.standardUncertainty ** -2, predicted.standardUncertainty ** -2];
    const mean = (a * measured.stress + b * predicted.stress) / (a + b);
    expect(numbersOf(bothAtUse).stress / mean).toBeCloseTo(1, 12);
    expect(numbersOf(bothAtUse).standardUncertainty ** -2 / (a + b)).toBeCloseTo(1, 12);
  });

  it('does not join what disagrees at the highest reading', () => {
    const friction = { kind: 'friction', low: 0.02, high: 0.03 } as const;
    const off = { ...millA, tensioner: { ...millA.tensioner, friction }, use: { torque: 10 } };
    expect(refusalOf(evaluateWorksheet(off).bothAtUse)).toBe('theyDisagree');
  });

  it('waits for the torque in use', () => {
    const { atUse, predictedAtUse, bothAtUse } = used(undefined);
    for (const outcome of [atUse, predictedAtUse, bothAtUse])
      expect(outcome).toMatchObject({ ready: false, waitsFor: ['use.torque'] });
  });
});

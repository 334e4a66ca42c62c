import { describe, expect, it } from 'vitest';
import { stressAtLoad } from '../../../../src/core/worksheet/decide/stress-at-load.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { evaluateWorksheet, worksheetChain } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

const unknown = { ready: false, waitsFor: ['readings'] } as const;
const measuredOn = (worksheet: Worksheet) => evaluateWorksheet(worksheet).measured;
const top = numbersOf(measuredOn(millA)).topTorque;

/** The mill with a screw that loses so much that its readings show more than it should give. */
const { tensioner } = millA;
const stiff: Worksheet = {
  ...millA,
  tensioner: { ...tensioner, friction: { kind: 'friction', low: 0.58, high: 0.6 } },
};
const loose: Worksheet = {
  ...millA,
  tensioner: { ...tensioner, friction: { kind: 'friction', low: 0.02, high: 0.021 } },
};
const at = (worksheet: Worksheet, load: number, measured = measuredOn(millA)) =>
  stressAtLoad({ ...worksheetChain(worksheet), measured }, load);

describe('stressAtLoad', () => {
  it('is that of the readings where they and the calculation agree', () => {
    const { stress, expandedUncertainty } = numbersOf(measuredOn(millA));
    const found = at(millA, top);
    expect(found?.by).toBe('readings');
    expect(found?.stress).toBeCloseTo(stress, 0);
    expect(found?.expandedUncertainty).toBeGreaterThanOrEqual(expandedUncertainty);
  });

  it('is calculated without readings, and read without a screw', () => {
    const { predicted } = evaluateWorksheet(millA);
    expect(at(millA, top, unknown)).toEqual({
      by: 'calculation',
      stress: numbersOf(predicted).stress,
      expandedUncertainty: numbersOf(predicted).expandedUncertainty,
    });
    const blind = { ...millA, band: { ...millA.band, bodyWidth: undefined } };
    expect(at(blind, top)?.by).toBe('readings');
    expect(at(blind, top, unknown)).toBeUndefined();
  });

  it('is the one that reaches higher where they are apart', () => {
    expect(evaluateWorksheet(stiff).agreement).toMatchObject({ verdict: 'measuredHigher' });
    expect(at(stiff, top)?.by).toBe('readings');
    expect(evaluateWorksheet(loose).agreement).toMatchObject({ verdict: 'measuredLower' });
    expect(at(loose, top)?.by).toBe('calculation');
  });

  it('is none where a load only moves the empty screw', () =>
    expect(at(millA, 0.1)).toBeUndefined());
});

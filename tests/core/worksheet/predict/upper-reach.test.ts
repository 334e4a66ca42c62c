/** How far up a calculated stress may lie: as far as the page's own trials say, and never less than to first order. */
import { describe, expect, it } from 'vitest';
import { upperReach } from '../../../../src/core/worksheet/predict/upper-reach.ts';
import {
  evaluateWorksheet,
  trialsOfPrediction,
  type Worksheet,
  worksheetChain,
} from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millD } from '../fixtures/hydraulic-mill.ts';
import { millA, millB, millC } from '../fixtures/mills.ts';

const unread = (mill: Worksheet, tensioner: Partial<Worksheet['tensioner']> = {}): Worksheet => ({
  ...mill,
  readings: [],
  use: { ...mill.use, torque: 14, pressure: 10e6 },
  tensioner: { ...mill.tensioner, ...tensioner },
});
const unknown = { collar: { kind: 'unknown' } } as const;

describe('upperReach', () => {
  it.each([
    unread(millA),
    unread(millB),
    unread(millA, unknown),
    unread(millC, unknown),
    unread(millD),
  ])('is that of ten times as many trials to within 3 %', (mill) => {
    const predicted = numbersOf(evaluateWorksheet(mill).predicted);
    const { high } = numbersOf(trialsOfPrediction(mill));
    const upper = upperReach(worksheetChain(mill).theory, predicted.operands.torque);
    expect(upper / (high / predicted.stress)).toBeCloseTo(1, 1.2);
    expect(upper).toBeGreaterThanOrEqual(predicted.high / predicted.stress);
  });

  it('is 1 where nothing is predicted', () => {
    const { theory } = worksheetChain(unread(millA));
    expect(upperReach(theory, 0)).toBe(1);
    expect(upperReach({ ready: false, waitsFor: ['use.torque'] }, 14)).toBe(1);
  });
});

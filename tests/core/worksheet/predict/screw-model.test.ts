import { describe, expect, it } from 'vitest';
import { worksheetScrew } from '../../../../src/core/worksheet/predict/screw.ts';
import { screwNumbers } from '../../../../src/core/worksheet/predict/screw-model.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

describe('screwNumbers', () => {
  it('shows its numbers without its functions', () => {
    const numbers = numbersOf(screwNumbers(worksheetScrew(millA.tensioner)));
    expect(Object.keys(numbers).sort()).toEqual([
      'drive',
      'efficiency',
      'efficiencyHigh',
      'efficiencyLow',
      'operands',
      'ready',
      'washer',
    ]);
  });
});

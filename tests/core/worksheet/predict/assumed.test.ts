import { describe, expect, it } from 'vitest';
import {
  emptyWorksheet,
  evaluateWorksheet,
  type Worksheet,
} from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

/** An M20 screw at 30 N·m on a band of 27 × 0.9 mm: four boxes. */
const four: Worksheet = {
  ...emptyWorksheet,
  band: { ...emptyWorksheet.band, bodyWidth: 27e-3, thickness: 0.9e-3 },
  tensioner: {
    ...emptyWorksheet.tensioner,
    thread: { kind: 'designation', designation: 'M20' },
  },
  use: { torque: 30 },
};
const shareOf = (sheet: Worksheet): number => {
  const { stress, expandedUncertainty } = numbersOf(evaluateWorksheet(sheet).predicted);
  return expandedUncertainty / stress;
};

describe('worksheetAssumed', () => {
  it('names all that stands for empty boxes, with its range', () => {
    const { assumed } = evaluateWorksheet(four);
    const ranges = assumed.map(({ name, path, low, high }) => [name, path, low, high]);
    expect(ranges).toEqual([
      ['threadFriction', 'tensioner.friction.kind', 0.1, 0.3],
      ['collarKind', 'tensioner.collar.kind', 0, 1],
      ['collarFriction', 'tensioner.collar.kind', 0.06, 0.2],
      ['collarDiameter', 'tensioner.collar.kind', expect.closeTo(0.0261), expect.closeTo(0.0319)],
      ['dragTorque', 'tensioner.dragTorque', 0, 3],
      ['thickness', 'band.thicknessFrom', expect.closeTo(0.873e-3), expect.closeTo(0.927e-3)],
    ]);
  });

  it('shares out the doubt: each part above 0, all of them and what is known make 1', () => {
    const { assumed, predicted } = evaluateWorksheet(four);
    const { contributions, standardUncertainty } = numbersOf(predicted);
    const known = contributions
      .filter(({ name }) => !assumed.some((one) => one.name === name))
      .map(({ contribution }) => (contribution / standardUncertainty) ** 2);
    const shares = [...known, ...assumed.map(({ varianceShare }) => varianceShare)];
    expect(Math.min(...shares)).toBeGreaterThan(0);
    expect(shares.reduce((sum, share) => sum + share)).toBeCloseTo(1, 6);
  });

  it('says what each box would bring, the best first', () => {
    const { nextBoxes } = evaluateWorksheet(four);
    expect(nextBoxes[0]?.path).toBe('tensioner.collar.kind');
    for (const { gain, halfWidthShare } of nextBoxes) {
      expect(gain).toBeGreaterThanOrEqual(0);
      expect(halfWidthShare + gain).toBeCloseTo(shareOf(four), 9);
    }
    const gains = nextBoxes.map(({ gain }) => gain);
    expect(gains).toEqual([...gains].sort((a, b) => b - a));
  });

  it('keeps what it promises where the box is then filled in with the middle: the no-load torque', () => {
    const promised = evaluateWorksheet(four).nextBoxes.find(
      ({ path }) => path === 'tensioner.dragTorque',
    );
    const tensioner = { ...four.tensioner, dragTorque: 1.5 };
    expect(shareOf({ ...four, tensioner })).toBeCloseTo(promised?.halfWidthShare ?? 0, 4);
  });

  it('has nothing to name where everything is filled in, or nothing can be predicted', () => {
    expect(evaluateWorksheet(millA)).toMatchObject({ assumed: [], nextBoxes: [] });
    expect(evaluateWorksheet(emptyWorksheet)).toMatchObject({ assumed: [], nextBoxes: [] });
  });
});

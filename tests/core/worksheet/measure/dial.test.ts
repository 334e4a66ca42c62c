import { describe, expect, it } from 'vitest';
import {
  usableDialReading,
  worksheetElongations,
} from '../../../../src/core/worksheet/measure/dial.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millE } from '../fixtures/mills.ts';

const { rig } = millE; // runs backwards, 0.254 mm for a turn

describe('usableDialReading', () => {
  it('takes no note of whole turns for none', () =>
    expect(usableDialReading({ dial: 1e-4, wholeTurns: undefined })).toEqual({
      dial: 1e-4,
      wholeTurns: 0,
    }));

  it.each([
    [undefined, 0],
    [Number.NaN, 0],
    [1e-4, Number.POSITIVE_INFINITY],
  ])('leaves out dial %s with turns %s', (dial, wholeTurns) =>
    expect(usableDialReading({ dial, wholeTurns })).toBeUndefined(),
  );
});

describe('worksheetElongations', () => {
  const first = { dial: 66.04e-6, wholeTurns: 0 };

  it('matches the hand-worked case: from 66.04 µm back through zero to 243.84 µm is 76.2 µm', () => {
    const readings = [{ dial: 243.84e-6, wholeTurns: 1 }];
    const [stretch] = numbersOf(worksheetElongations(rig, () => first, readings)).elongations;
    expect(stretch).toBeCloseTo(76.2e-6, 12);
  });

  it('counts whole turns from those of the first reading, by hand the same 76.2 µm', () => {
    const turned = { ...first, wholeTurns: 3 };
    const readings = [turned, { dial: 243.84e-6, wholeTurns: 4 }];
    const [none, stretch] = numbersOf(
      worksheetElongations(rig, () => turned, readings),
    ).elongations;
    expect(none).toBeCloseTo(0, 15);
    expect(stretch).toBeCloseTo(76.2e-6, 12);
  });

  it('changes its sign with the way the dial runs', () => {
    const readings = [{ dial: 0, wholeTurns: 0 }];
    const ahead = worksheetElongations({ ...rig, dialRunsBackwards: false }, () => first, readings);
    const back = worksheetElongations(rig, () => first, readings);
    expect(numbersOf(ahead).elongations[0]).toBe(-66.04e-6);
    expect(numbersOf(back).elongations[0]).toBe(66.04e-6);
  });

  it('needs the travel of a turn only where the turns differ', () => {
    const open = { ...rig, travelPerTurn: undefined };
    const same = [{ dial: 0, wholeTurns: 2 }];
    expect(worksheetElongations(open, () => ({ ...first, wholeTurns: 2 }), same).ready).toBe(true);
    expect(worksheetElongations(open, () => first, same)).toEqual({
      ready: false,
      waitsFor: ['rig.travelPerTurn'],
    });
  });
});

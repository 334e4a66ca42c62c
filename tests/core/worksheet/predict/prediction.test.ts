import { describe, expect, it } from 'vitest';
import { ready } from '../../../../src/core/worksheet/outcome.ts';
import { worksheetChain } from '../../../../src/core/worksheet/predict/chain.ts';
import {
  reachOf,
  trialsOfPredicted,
  worksheetPredicted,
  worksheetPredictedCurve,
} from '../../../../src/core/worksheet/predict/prediction.ts';
import { torqueAtHand } from '../../../../src/core/worksheet/torque-at-hand.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

const theory = () => worksheetChain(millA).theory;
const at = (torque: number) => worksheetPredicted(theory(), ready({ torque }));

describe('worksheetPredicted', () => {
  it('gives mill A 116.8 MPa, mostly doubtful for its thread, worked by other code', () => {
    const predicted = numbersOf(at(14.5));
    expect(predicted.stress / 1e6).toBeCloseTo(116.76, 2);
    const lines = Object.fromEntries(
      predicted.contributions.map(({ name, contribution }) => [name, contribution / 1e6]),
    );
    expect(lines['torque']).toBeCloseTo(2.854, 3);
    expect(lines['threadFriction']).toBeCloseTo(12.74, 2);
    expect(lines['collarFriction']).toBeCloseTo(0.6198, 4);
    expect(lines['meanDiameter']).toBeCloseTo(0.4325, 4);
    expect(Math.hypot(lines['bodyWidth'] ?? 0, lines['thickness'] ?? 0)).toBeCloseTo(1.344, 3);
    expect(lines['dragTorque']).toBeCloseTo(0.8523, 4);
    expect(predicted.expandedUncertainty).toBe(2 * predicted.standardUncertainty);
  });

  it('is proportional to the torque above the drag', () => {
    const ratio = numbersOf(at(0.8 + 2 * 3)).stress / numbersOf(at(0.8 + 3)).stress;
    expect(ratio).toBeCloseTo(2, 12);
  });

  it('refuses a torque that only turns the empty screw', () => {
    expect(at(0.8)).toEqual({
      ready: false,
      waitsFor: ['readings', 'tensioner.dragTorque'],
      refusal: { code: 'belowDrag', values: { torque: 0.8, dragTorque: 0.8 } },
    });
    expect(at(0.81).ready).toBe(true);
  });

  it('is made at the top torque of the rows, in whatever order they stand', () => {
    const readings = [...millA.readings].reverse();
    expect(numbersOf(torqueAtHand({ ...millA, readings })).torque).toBe(14.5);
  });
});

describe('trialsOfPredicted', () => {
  const range = () => numbersOf(trialsOfPredicted(theory(), at(14.5)));

  it('is skewed upwards, as efficiency falls as one over friction', () => {
    const { stress } = numbersOf(at(14.5));
    const { low, high } = range();
    expect(high - stress).toBeGreaterThan(1.2 * (stress - low));
    expect(low / 1e6).toBeCloseTo(97.4, -0.5);
    expect(high / 1e6).toBeCloseTo(144.2, -0.5);
  });

  it('is the same each time', () => expect(range()).toEqual(range()));
});

describe('worksheetPredictedCurve', () => {
  it('leaves out torques up to the drag, and never goes below no stress', () => {
    const { points } = numbersOf(worksheetPredictedCurve(theory(), [0, 0.8, 0.85, 14.5]));
    expect(points.map(({ torque }) => torque)).toEqual([0.85, 14.5]);
    expect(points[0]?.low).toBe(0);
    expect(points[1]?.stress).toBe(numbersOf(at(14.5)).stress);
  });

  it('reaches as far as it is told to either side', () => {
    const { stress, expandedUncertainty } = numbersOf(at(14.5));
    const reach = { below: 0.8, above: 1.1 };
    const [point] = numbersOf(worksheetPredictedCurve(theory(), [14.5], reach)).points;
    expect(point?.low).toBeCloseTo(stress - 0.8 * expandedUncertainty, 3);
    expect(point?.high).toBeCloseTo(stress + 1.1 * expandedUncertainty, 3);
  });

  it('ends on the interval by trials where its reach is taken from there', () => {
    const predicted = numbersOf(at(14.5));
    const trials = numbersOf(trialsOfPredicted(theory(), at(14.5)));
    const reach = reachOf(trials, predicted);
    const [point] = numbersOf(worksheetPredictedCurve(theory(), [14.5], reach)).points;
    expect(point?.low).toBeCloseTo(trials.low, 3);
    expect(point?.high).toBeCloseTo(trials.high, 3);
  });
});

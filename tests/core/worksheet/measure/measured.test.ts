import { describe, expect, it } from 'vitest';
import { trialsOfMeasured } from '../../../../src/core/worksheet/measure/measured.ts';
import { worksheetMeasurement } from '../../../../src/core/worksheet/measure/measurement.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { worksheetMillResults } from '../fixtures/mill-results.ts';
import { millA, millE } from '../fixtures/mills.ts';

const measuredOfMillA = () => numbersOf(worksheetMeasurement(millA).measured);

describe('worksheetMeasured', () => {
  it('gives mill A 106.8 ± 20.2 MPa, and the lines of its budget, worked by other code', () => {
    const measured = measuredOfMillA();
    expect(measured.stress / 1e6).toBeCloseTo(106.8, 1);
    expect(measured.expandedUncertainty / 1e6).toBeCloseTo(20.221, 3);
    const lines = Object.fromEntries(
      measured.contributions.map(({ name, contribution }) => [name, contribution / 1e6]),
    );
    expect(lines['youngsModulus']).toBeCloseTo(1.504, 3);
    expect(lines['stretch']).toBeCloseTo(8.675, 3);
    expect(lines['drag']).toBeCloseTo(0.7796, 4);
    expect(lines['dial']).toBeCloseTo(2.964, 3);
    expect(lines['gaugeLength']).toBeCloseTo(0.1542, 4);
    expect(lines['misalignment']).toBeCloseTo(0.11, 3);
    expect(Math.hypot(lines['warmthTogether'] ?? 0, lines['warmthApart'] ?? 0)).toBeCloseTo(
      1.364,
      3,
    );
    expect(measured.contributions[0]?.name).toBe('stretch');
  });

  it('is the filled-in formula of its operands, and its slope times the torque above drag', () => {
    const measured = measuredOfMillA();
    const { youngsModulus, stretch, gaugeLength, misalignment } = measured.operands;
    const stress = (youngsModulus * stretch) / (gaugeLength * misalignment);
    expect(measured.stress / stress).toBeCloseTo(1, 12);
    const { slope, topTorque, dragTorque } = measured;
    expect((slope * (topTorque - dragTorque)) / stress).toBeCloseTo(1, 12);
  });

  it('reaches from the stress less its expanded uncertainty to the stress and as much', () => {
    const { stress, low, high, expandedUncertainty } = measuredOfMillA();
    expect(low).toBe(stress - expandedUncertainty);
    expect(high).toBe(stress + expandedUncertainty);
    expect(low).toBeLessThan(high);
  });

  it('is twice as high at half the gauge length', () => {
    const rig = { ...millA.rig, gaugeLength: 0.2 };
    const short = numbersOf(worksheetMeasurement({ ...millA, rig }).measured);
    expect(short.stress / measuredOfMillA().stress).toBeCloseTo(2, 12);
  });
});

describe('trialsOfMeasured', () => {
  it('gives mill E the interval that other code found, within what trials can settle', () => {
    const trials = numbersOf(trialsOfMeasured(worksheetMeasurement(millE).inputs));
    expect(trials.low / worksheetMillResults.E.trialsLow).toBeCloseTo(1, 2);
    expect(trials.high / worksheetMillResults.E.trialsHigh).toBeCloseTo(1, 2);
  });

  it('waits for what the stress waits for', () => {
    const empty = worksheetMeasurement({ ...millE, readings: [] });
    expect(trialsOfMeasured(empty.inputs)).toEqual(empty.inputs);
  });
});

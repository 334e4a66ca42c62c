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

  // By hand: a strip up to 3° off reads short by up to 1.3·sin² 3°, by half of it in the middle; and so
  // 205 GPa × 208.0195 µm over 400 mm × 0.998 219 6 is 106.8001 MPa, 13.7 N·m above the drag: 7.79563 for each.
  it('matches the hand-worked case of mill A: 106.8001 MPa, 7.79563 MPa for each N·m', () => {
    const { stress, slope, topTorque, dragTorque, operands } = measuredOfMillA();
    expect(stress / 1e6).toBeCloseTo(106.8001, 4);
    expect(slope / 1e6).toBeCloseTo(7.795_63, 5);
    expect({ topTorque, dragTorque }).toEqual({ topTorque: 14.5, dragTorque: 0.8 });
    expect(operands).toEqual({
      youngsModulus: 205e9,
      stretch: expect.closeTo(208.0195e-6, 10),
      gaugeLength: 0.4,
      misalignment: expect.closeTo(1 - 0.65 * Math.sin(Math.PI / 60) ** 2, 9),
    });
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

import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../src/core/worksheet-form.ts';
import { worksheetMeasurement } from '../../src/core/worksheet-measurement.ts';
import {
  targetBox,
  worksheetExpectedStretch,
  worksheetSetting,
} from '../../src/core/worksheet-setting.ts';
import { numbersOf, refusalOf } from './fixtures/ready.ts';
import { worksheetMillResults } from './fixtures/worksheet-mill-results.ts';
import { millA } from './fixtures/worksheet-mills.ts';

const aiming = (stress: number | undefined): Worksheet => ({
  ...millA,
  target: { ...millA.target, stress },
});
const settingFor = (stress: number | undefined) =>
  worksheetSetting(aiming(stress), worksheetMeasurement(millA).measured);

describe('worksheetSetting', () => {
  const setting = numbersOf(settingFor(110e6));

  it('gives mill A 14.91 N·m for 110 MPa, worked by other code', () => {
    expect(setting.torque / worksheetMillResults.A.setting).toBeCloseTo(1, 6);
    expect(setting.beyondReadings).toBe(true);
  });

  it('is the filled-in formula of its operands', () => {
    const { dragTorque, topTorque, targetStress, topStress } = setting.operands;
    const torque = dragTorque + ((topTorque - dragTorque) * targetStress) / topStress;
    expect(setting.torque).toBeCloseTo(torque, 12);
  });

  it('gives the top torque back for the stress measured there', () => {
    const { topStress, topTorque } = setting.operands;
    const again = numbersOf(settingFor(topStress));
    expect(again.torque).toBeCloseTo(topTorque, 12);
    expect(numbersOf(settingFor(0.99 * topStress)).beyondReadings).toBe(false);
  });

  it('says on the wrench what its uncertainty is worth in stress', () => {
    const slope = numbersOf(worksheetMeasurement(millA).measured).slope;
    expect(setting.torqueUncertainty * slope).toBeCloseTo(setting.expandedUncertainty, 3);
    expect(setting.high - setting.low).toBeCloseTo(2 * setting.expandedUncertainty, 3);
  });

  it('waits for a target, and refuses one of no stress', () => {
    expect(settingFor(undefined)).toEqual({ ready: false, waitsFor: ['target.stress'] });
    expect(refusalOf(settingFor(0))).toBe('outOfRange');
    expect(targetBox(aiming(1e8))).toEqual({ ready: true, stress: 1e8 });
  });
});

describe('worksheetExpectedStretch', () => {
  it('matches the hand-worked case: 110 MPa on 400 mm at 205 GPa is 214.6 µm', () => {
    const { stretch, operands } = numbersOf(worksheetExpectedStretch(millA));
    expect(stretch).toBeCloseTo(214.634e-6, 9);
    expect(operands).toEqual({ stress: 110e6, gaugeLength: 0.4, youngsModulus: 205e9 });
  });

  it('needs no reading', () =>
    expect(worksheetExpectedStretch({ ...millA, readings: [] }).ready).toBe(true));
});

import { describe, expect, it } from 'vitest';
import {
  knownTarget,
  worksheetExpectedStretch,
  worksheetSetting,
} from '../../../../src/core/worksheet/decide/setting.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetMeasurement } from '../../../../src/core/worksheet/measure/measurement.ts';
import { ready } from '../../../../src/core/worksheet/outcome.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { worksheetMillResults } from '../fixtures/mill-results.ts';
import { millA } from '../fixtures/mills.ts';

const aiming = (stress: number | undefined): Worksheet => ({
  ...millA,
  target: { ...millA.target, stress },
});
const settingFor = (stress: number | undefined) =>
  worksheetSetting(knownTarget(aiming(stress)), worksheetMeasurement(millA).measured);

const expectedOn = (worksheet: Worksheet) =>
  worksheetExpectedStretch(worksheet, knownTarget(worksheet));

describe('worksheetSetting', () => {
  const setting = () => numbersOf(settingFor(110e6));

  it('gives mill A 14.91 N·m for 110 MPa, worked by other code', () => {
    const { torque, beyondReadings } = setting();
    expect(torque / worksheetMillResults.A.setting).toBeCloseTo(1, 6);
    expect(beyondReadings).toBe(true);
  });

  it('names what it was worked from: 0.8 + 13.7 × 110/106.8 N·m, worked by other code', () =>
    expect(setting().operands).toEqual({
      dragTorque: 0.8,
      topTorque: 14.5,
      targetStress: 110e6,
      topStress: expect.closeTo(106_800_132, 0),
    }));

  it('gives the top torque back for the stress measured there', () => {
    const { topStress, topTorque } = setting().operands;
    const again = numbersOf(settingFor(topStress));
    expect(again.torque).toBeCloseTo(topTorque, 12);
  });

  it('is beyond the readings only above their top torque: by hand, 9 N·m at 100 MPa', () => {
    const measured = numbersOf(worksheetMeasurement(millA).measured);
    const round = ready({ ...measured, dragTorque: 1, topTorque: 9, stress: 100e6 });
    const roundly = (stress: number) =>
      numbersOf(worksheetSetting(knownTarget(aiming(stress)), round));
    expect(roundly(50e6)).toMatchObject({ torque: 5, beyondReadings: false });
    expect(roundly(100e6)).toMatchObject({ torque: 9, beyondReadings: false });
    expect(roundly(112.5e6)).toMatchObject({ torque: 10, beyondReadings: true });
  });

  it('reaches as far below the target as above it', () => {
    const { low, high, expandedUncertainty } = setting();
    expect(low).toBe(110e6 - expandedUncertainty);
    expect(high).toBe(110e6 + expandedUncertainty);
  });

  it('may need the torques that reach the two ends of its interval', () => {
    const { torqueLow, torqueHigh, low, high } = setting();
    expect(torqueLow).toBeCloseTo(numbersOf(settingFor(low)).torque, 9);
    expect(torqueHigh).toBeCloseTo(numbersOf(settingFor(high)).torque, 9);
  });

  it('waits for a target, and refuses one of no stress', () => {
    expect(settingFor(undefined)).toEqual({ ready: false, waitsFor: ['target.stress'] });
    expect(refusalOf(settingFor(0))).toBe('outOfRange');
    expect(knownTarget(aiming(1e8))).toEqual({ ready: true, stress: 1e8 });
  });
});

describe('worksheetExpectedStretch', () => {
  it('matches the hand-worked case: 110 MPa on 400 mm at 205 GPa is 214.6 µm', () => {
    const { stretch, operands } = numbersOf(expectedOn(millA));
    expect(stretch).toBeCloseTo(214.634e-6, 9);
    expect(operands).toEqual({ stress: 110e6, gaugeLength: 0.4, youngsModulus: 205e9 });
  });

  it('needs no reading', () => expect(expectedOn({ ...millA, readings: [] }).ready).toBe(true));

  it.each([
    ['target.stress', aiming(undefined)],
    ['rig.gaugeLength', { ...millA, rig: { ...millA.rig, gaugeLength: undefined } }],
    ['band.youngsModulus', { ...millA, band: { ...millA.band, youngsModulus: undefined } }],
  ])('waits for %s', (box, worksheet) =>
    expect(expectedOn(worksheet)).toEqual({ ready: false, waitsFor: [box] }),
  );
});

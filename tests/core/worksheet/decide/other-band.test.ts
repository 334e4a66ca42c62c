import { describe, expect, it } from 'vitest';
import {
  worksheetOtherBand,
  worksheetOtherSection,
} from '../../../../src/core/worksheet/decide/other-band.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { ready } from '../../../../src/core/worksheet/outcome.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA, millC } from '../fixtures/mills.ts';

describe('worksheetOtherBand', () => {
  it('gives mill A 11.88 N·m and 204.9 µm for its other band, worked by other code', () => {
    const other = numbersOf(evaluateWorksheet(millA).otherBand);
    expect(other.torque).toBeCloseTo(11.87716, 5);
    expect(other.stretch).toBeCloseTo(204.878e-6, 9);
    expect(other.standardUncertainty / other.stress).toBeCloseTo(0.0909, 4);
  });

  it('reaches from its target less the expanded uncertainty to its target and as much', () => {
    const { low, high, expandedUncertainty } = numbersOf(evaluateWorksheet(millA).otherBand);
    expect(low).toBe(105e6 - expandedUncertainty);
    expect(high).toBe(105e6 + expandedUncertainty);
    expect(low).toBeLessThan(high);
  });

  // By hand: 110 MPa × 3 mm × 26.2 mm² × √0.9975 (strands at a sine of 0.05), over π × 2 × 1/8, above 1 N·m of drag.
  it('matches the hand-worked case of mill C: 11.9947 N·m by a screw of an eighth', () => {
    const { section, measured } = evaluateWorksheet(millC);
    const operands = { lead: 0.003, strandHalfAngle: Math.asin(0.05), advantage: 2 };
    const interval = { standardUncertainty: 0.01, low: 0.105, high: 0.145 };
    const efficiency = ready({
      efficiency: 0.125,
      ...interval,
      operands: { ...operands, slope: Number.NaN, area: Number.NaN }, // of its own band: no part of this
    });
    const other = numbersOf(worksheetOtherBand(millC, { section, measured, efficiency }));
    expect(other.torque).toBeCloseTo(11.994_66, 5);
    expect(other.operands).toEqual({
      ...operands,
      efficiency: 0.125,
      dragTorque: 1,
      area: expect.closeTo(26.2e-6, 12),
      targetStress: 110e6,
    });
  });

  it('gives the own setting back for the own band and target', () => {
    const { bodyWidth, thickness } = millA.band;
    const otherBand = { bodyWidth, thickness, targetStress: millA.target.stress };
    const results = evaluateWorksheet({ ...millA, otherBand });
    expect(numbersOf(results.otherBand).torque).toBeCloseTo(numbersOf(results.setting).torque, 9);
  });

  it('waits for another band, and for its boxes', () => {
    const none = { ...millA, otherBand: undefined };
    const waiting = { ready: false, waitsFor: ['otherBand'] };
    expect(worksheetOtherSection(none)).toEqual(waiting);
    expect(evaluateWorksheet(none).otherBand).toEqual(waiting);
    const half = { bodyWidth: 0.02, thickness: undefined, targetStress: 1e8 };
    expect(evaluateWorksheet({ ...millA, otherBand: half }).otherBand).toEqual({
      ready: false,
      waitsFor: ['otherBand.thickness'],
    });
  });

  it('takes the first band’s target where it has none of its own', () => {
    const aimless = { bodyWidth: 0.02, thickness: 0.001, targetStress: undefined };
    const like = { ...aimless, targetStress: millA.target.stress };
    const settingFor = (otherBand: typeof like | typeof aimless) =>
      numbersOf(evaluateWorksheet({ ...millA, otherBand }).otherBand);
    expect(settingFor(aimless)).toEqual(settingFor(like));
    expect(settingFor(aimless).stress).toBe(110e6);
  });

  it('waits for a target, the steel and the gauge length by their boxes', () => {
    const { band, rig } = millA;
    const waitsFor = (change: Partial<Worksheet>) =>
      evaluateWorksheet({ ...millA, ...change }).otherBand;
    const aimless = { bodyWidth: 0.02, thickness: 0.001, targetStress: undefined };
    const target = { ...millA.target, stress: undefined };
    expect(waitsFor({ otherBand: aimless, target })).toEqual({
      ready: false,
      waitsFor: ['otherBand.targetStress'],
    });
    expect(waitsFor({ band: { ...band, youngsModulus: undefined } })).toEqual({
      ready: false,
      waitsFor: ['band.youngsModulus'],
    });
    expect(waitsFor({ rig: { ...rig, gaugeLength: undefined } })).toEqual({
      ready: false,
      waitsFor: ['rig.gaugeLength'],
    });
  });
});

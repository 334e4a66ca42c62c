import { describe, expect, it } from 'vitest';
import { evaluateWorksheet } from '../../src/core/worksheet.ts';
import { worksheetOtherSection } from '../../src/core/worksheet-other-band.ts';
import { numbersOf } from './fixtures/ready.ts';
import { millA, millC } from './fixtures/worksheet-mills.ts';

describe('worksheetOtherBand', () => {
  it('gives mill A 11.88 N·m and 204.9 µm for its other band, worked by other code', () => {
    const other = numbersOf(evaluateWorksheet(millA).otherBand);
    expect(other.torque).toBeCloseTo(11.87716, 5);
    expect(other.stretch).toBeCloseTo(204.878e-6, 9);
    expect(other.standardUncertainty / other.stress).toBeCloseTo(0.0909, 4);
  });

  it('is the filled-in formula of its operands', () => {
    const other = numbersOf(evaluateWorksheet(millC).otherBand);
    const { dragTorque, targetStress, lead, area, strandHalfAngle, advantage, efficiency } =
      other.operands;
    const load = targetStress * lead * area * Math.cos(strandHalfAngle);
    expect(other.torque).toBeCloseTo(dragTorque + load / (Math.PI * advantage * efficiency), 9);
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
});

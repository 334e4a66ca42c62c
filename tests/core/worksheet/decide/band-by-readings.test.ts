import { describe, expect, it } from 'vitest';
import { bandByReadings } from '../../../../src/core/worksheet/decide/band-by-readings.ts';
import type { WorksheetBandOther } from '../../../../src/core/worksheet/inputs.ts';
import { ready } from '../../../../src/core/worksheet/outcome.ts';
import { worksheetBody } from '../../../../src/core/worksheet/predict/section.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { bandOf } from '../fixtures/band-of.ts';
import { millA, millC } from '../fixtures/mills.ts';

const byReadings = (band: Partial<WorksheetBandOther>) => {
  const sizes = { name: '', bodyWidth: undefined, thickness: undefined, targetStress: undefined };
  return numbersOf(bandOf({ ...millA, bands: [{ ...sizes, ...band }] }).byReadings);
};

describe('bandByReadings', () => {
  it('gives mill A 11.88 N·m for its other band, worked by other code', () => {
    const other = numbersOf(bandOf(millA).byReadings);
    expect(other.torque).toBeCloseTo(11.87716, 5);
    expect(other.standardUncertainty / other.stress).toBeCloseTo(0.0909, 4);
    expect(other.beyondReadings).toBe(false);
  });

  it('reaches from its target less the expanded uncertainty to its target and as much', () => {
    const { low, high, expandedUncertainty } = numbersOf(bandOf(millA).byReadings);
    expect(low).toBe(105e6 - expandedUncertainty);
    expect(high).toBe(105e6 + expandedUncertainty);
    expect(low).toBeLessThan(high);
  });

  // By hand: 110 MPa × 3 mm × 26.2 mm² × √0.9975 (strands at a sine of 0.05), over π × 2 × 1/8, above 1 N·m of drag.
  it('matches the hand-worked case of mill C: 11.9947 N·m by a screw of an eighth', () => {
    const { section, measured } = evaluateWorksheet(millC);
    const drive = { kind: 'screw', lead: 0.003 } as const;
    const strands = { strandCount: 2, strandHalfAngle: Math.asin(0.05) } as const;
    const operands = { drive, ...strands, advantage: 2 };
    const interval = { standardUncertainty: 0.01, low: 0.105, high: 0.145 };
    const efficiency = ready({
      efficiency: 0.125,
      ...interval,
      operands: { ...operands, slope: Number.NaN, area: Number.NaN }, // of its own band: no part of this
    });
    const [band] = millC.bands;
    const unknown = { bodyWidth: undefined, thickness: undefined };
    const other = worksheetBody('bands.0', band ?? unknown, 'micrometer');
    const target = ready({ stress: band?.targetStress ?? Number.NaN });
    const found = numbersOf(bandByReadings(target, other, { section, measured, efficiency }));
    expect(found.torque).toBeCloseTo(11.994_66, 5);
    expect(found.operands).toEqual({
      ...operands,
      efficiency: 0.125,
      dragTorque: 1,
      area: expect.closeTo(26.2e-6, 12),
      targetStress: 110e6,
    });
  });

  it('gives the own setting back for the own band and target', () => {
    const { bodyWidth, thickness } = millA.band;
    const again = byReadings({ bodyWidth, thickness, targetStress: millA.target.stress });
    const own = numbersOf(evaluateWorksheet(millA).setting);
    expect(again.torque).toBeCloseTo(own.torque, 9);
    expect(again.beyondReadings).toBe(true);
    expect(again.torqueHigh).toBeGreaterThan(own.torqueHigh); // two sections are less sure than none
  });
});

describe('allowedByReadings', () => {
  const limitedTo = (makerLimitStress: number, worksheet = millA) => {
    const target = { ...worksheet.target, makerLimitStress, makerLimitWheelForce: undefined };
    return { ...worksheet, target };
  };

  it('is the torque whose stress, uncertainty included, ends at the limit', () => {
    const { high, torque } = numbersOf(bandOf(millA).byReadings);
    expect(bandOf(limitedTo(high)).allowedLoad).toBeCloseTo(torque, 9);
  });

  it('is a little below what the measured band may have, for a band like it: two sections are in doubt', () => {
    const { bodyWidth, thickness } = millA.band;
    const like = { name: '', bodyWidth, thickness, targetStress: undefined };
    const results = evaluateWorksheet(limitedTo(90e6, { ...millA, bands: [like] }));
    const own = results.allowedLoad?.load ?? Number.NaN;
    const other = results.bands[0]?.allowedLoad ?? Number.NaN;
    expect(other).toBeLessThan(own);
    expect(other).toBeGreaterThan(0.95 * own);
  });

  it('is by calculation without readings, lower as that knows less, and nothing without a limit', () => {
    const read = bandOf(limitedTo(110e6)).allowedLoad ?? Number.NaN;
    const unread = bandOf({ ...limitedTo(110e6), readings: [] }).allowedLoad ?? Number.NaN;
    expect(unread).toBeGreaterThan(0);
    expect(unread).toBeLessThan(read);
    const target = { ...millA.target, makerLimitStress: undefined };
    const free = { ...millA, target: { ...target, makerLimitWheelForce: undefined } };
    expect(bandOf(free).allowedLoad).toBeUndefined();
  });
});

import { describe, expect, it } from 'vitest';
import type { Worksheet, WorksheetReading } from '../../../../src/core/worksheet/inputs.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { bandOf } from '../fixtures/band-of.ts';
import { millA, worksheetMills } from '../fixtures/mills.ts';

const turned = (change: (turns: number) => number | undefined): Worksheet => ({
  ...millA,
  readings: millA.readings.map(
    (reading): WorksheetReading => ({ ...reading, turns: change(reading.turns as number) }),
  ),
});

describe('turnsSetting', () => {
  it('begins at the torque for half of the stress, or where the readings run straight', () => {
    for (const worksheet of Object.values(worksheetMills)) {
      const { setting, turnsSetting, turns } = evaluateWorksheet(worksheet);
      const { torque, stress, operands } = numbersOf(setting);
      const share = Math.max(0.5, numbersOf(turns).operands.straightStress / stress);
      const half = operands.dragTorque + share * (torque - operands.dragTorque);
      expect(numbersOf(turnsSetting).markedTorque).toBeCloseTo(half, 9);
    }
  });

  it('is in proportion to the turns of the readings: mill A, by hand', () => {
    const { turns, turnsSetting, setting } = evaluateWorksheet(millA);
    const { operands } = numbersOf(turns);
    const { stress } = numbersOf(setting);
    const { markedTorque, turns: counted } = numbersOf(turnsSetting);
    const torques = numbersOf(setting);
    const share = (torques.torque - markedTorque) / (torques.torque - torques.operands.dragTorque);
    const force = 2 * 29e-6 * stress * share; // two strands of 29 mm²
    expect(counted).toBeCloseTo((operands.turns * force) / operands.wheelForce, 9);
  });

  it('doubles with the turns of the readings, and is surer for its size', () => {
    const [once, twice] = [(turns: number) => turns, (turns: number) => 2 * turns].map((change) =>
      numbersOf(evaluateWorksheet(turned(change)).turnsSetting),
    );
    expect(twice?.turns).toBeCloseTo(2 * (once?.turns ?? Number.NaN), 9);
    const share = (of: typeof once) => (of?.expandedUncertainty ?? Number.NaN) / (of?.turns ?? 1);
    expect(share(twice)).toBeLessThan(share(once));
    expect(share(once)).toBeGreaterThan(0.1);
  });

  it('needs more turns for a wider band at the same stress, less than in proportion', () => {
    const [bodyWidth, thickness] = [2 * (millA.band.bodyWidth ?? 0), millA.band.thickness];
    const wide = { name: '', bodyWidth, thickness, targetStress: millA.target.stress };
    const { turns } = numbersOf(bandOf({ ...millA, bands: [wide] }).turns);
    const own = numbersOf(evaluateWorksheet(millA).turnsSetting).turns;
    expect(turns).toBeGreaterThan(own); // the frame gives twice as far
    expect(turns).toBeLessThan(2 * own); // the band itself no farther
  });

  it('waits for readings with turns, and where a target is not above where they run straight', () => {
    const waiting = { ready: false, waitsFor: ['readings'] };
    expect(evaluateWorksheet(turned(() => undefined)).turnsSetting).toEqual(waiting);
    const target = { ...millA.target, stress: 20e6 };
    expect(evaluateWorksheet({ ...millA, target }).turnsSetting).toEqual(waiting);
  });
});

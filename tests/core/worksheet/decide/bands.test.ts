import { describe, expect, it } from 'vitest';
import type { Worksheet, WorksheetBandOther } from '../../../../src/core/worksheet/inputs.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { bandOf } from '../fixtures/band-of.ts';
import { millA } from '../fixtures/mills.ts';

const aimless = { name: 'wide', bodyWidth: 0.02, thickness: 0.001, targetStress: undefined };
const own: WorksheetBandOther = {
  name: 'as measured',
  bodyWidth: millA.band.bodyWidth,
  thickness: millA.band.thickness,
  targetStress: millA.target.stress,
};
const having = (...bands: readonly WorksheetBandOther[]): Worksheet => ({ ...millA, bands });

describe('worksheetBands', () => {
  it('gives each band its own, in order, by name', () => {
    const { bands } = evaluateWorksheet(having(aimless, ...millA.bands, own));
    expect(bands.map(({ name }) => name)).toEqual(['wide', '', 'as measured']);
    expect(numbersOf(bandOf(having(aimless, ...millA.bands), 1).byReadings)).toEqual(
      numbersOf(bandOf(millA).byReadings),
    );
    expect(evaluateWorksheet(having()).bands).toEqual([]);
  });

  it('takes the first band’s target where one has none of its own', () => {
    const like = { ...aimless, targetStress: millA.target.stress };
    expect(bandOf(having(aimless))).toEqual(bandOf(having(like)));
    expect(numbersOf(bandOf(having(aimless)).byReadings).stress).toBe(110e6);
  });

  it('gives the own band what the sheet gives it, by the screw alone, on the dial and in turns', () => {
    const results = evaluateWorksheet(having(own));
    const [band] = results.bands;
    expect(band?.byScrew).toEqual(results.theorySetting);
    expect(band?.stretch).toEqual(results.expectedStretch);
    const [turns, ownTurns] = [bandOf(having(own)).turns, results.turnsSetting].map(numbersOf);
    expect(turns?.turns).toBeCloseTo(ownTurns?.turns ?? Number.NaN, 12);
    expect(turns?.markedTorque).toBeCloseTo(ownTurns?.markedTorque ?? Number.NaN, 12);
  });

  it('gives mill A 204.9 µm on the dial for its other band, worked by other code', () =>
    expect(numbersOf(bandOf(millA).stretch).stretch).toBeCloseTo(204.878e-6, 9));

  it('needs no reading for the screw alone', () => {
    const { byScrew, byReadings, turns } = bandOf({ ...millA, readings: [] });
    expect(numbersOf(byScrew).torque).toBeCloseTo(numbersOf(bandOf(millA).byScrew).torque, 12);
    expect([byReadings.ready, turns.ready]).toEqual([false, false]);
  });

  it('waits for its boxes, and for those of the mill', () => {
    const half = { ...aimless, thickness: undefined };
    const waiting = (...waitsFor: string[]) => ({ ready: false, waitsFor });
    expect(bandOf(having(half)).byReadings).toEqual(waiting('bands.0.thickness'));
    expect(bandOf(having(own, half), 1).byScrew).toEqual(waiting('bands.1.thickness'));
    const target = { ...millA.target, stress: undefined };
    const nowhere = { ...having(aimless), target };
    expect(bandOf(nowhere).byReadings).toEqual(waiting('bands.0.targetStress'));
    const band = { ...millA.band, youngsModulus: undefined };
    expect(bandOf({ ...having(own), band }).byReadings).toEqual(waiting('band.youngsModulus'));
    const rig = { ...millA.rig, gaugeLength: undefined };
    expect(bandOf({ ...having(own), rig }).stretch).toEqual(waiting('rig.gaugeLength'));
  });

  it('is stopped by a rail on every route, one band without the other', () => {
    const target = { ...millA.target, makerLimitStress: 108e6 };
    const { bands, guards } = evaluateWorksheet({ ...having(...millA.bands, own), target });
    expect(bands.map(({ byReadings, byScrew }) => [byReadings, byScrew].map(refusalOf))).toEqual([
      [undefined, undefined],
      ['aboveBandLimit', 'aboveBandLimit'],
    ]);
    expect(bands[1]?.turns.ready).toBe(false);
    const stops = guards.filter(({ level }) => level === 'stop');
    expect(stops.map(({ inputs }) => inputs[0])).toEqual(['target.stress', 'bands.1.targetStress']);
  });
});

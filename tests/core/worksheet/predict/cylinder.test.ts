import { describe, expect, it } from 'vitest';
import {
  worksheetCylinder,
  worksheetSeal,
} from '../../../../src/core/worksheet/predict/cylinder.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { hydraulicFigures } from '../../../published/mills/hydraulic-results.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { millD } from '../fixtures/hydraulic-mill.ts';

const { tensioner } = millD;
const withCylinder = (changed: Partial<typeof tensioner.cylinder>) => ({
  ...tensioner,
  cylinder: { ...tensioner.cylinder, ...changed },
});

describe('what a cylinder passes on', () => {
  it('is what its seal leaves', () => {
    const half = numbersOf(worksheetCylinder(withCylinder({ sealLow: 0.02, sealHigh: 0.06 })));
    expect(half).toMatchObject({ efficiencyLow: 0.94, efficiency: 0.96, efficiencyHigh: 0.98 });
    expect(half.assumed).toEqual([]);
  });

  it('is all of it where the seal takes nothing', () =>
    expect(numbersOf(worksheetCylinder(tensioner))).toMatchObject({
      efficiencyLow: 1,
      efficiencyHigh: 1,
    }));

  it('is taken for none to 6 % where nobody knows the seal, and says so', () => {
    const open = worksheetCylinder(withCylinder({ sealLow: undefined, sealHigh: undefined }));
    const { assumed, efficiency } = numbersOf(open);
    expect(efficiency).toBeCloseTo(0.97, 12);
    expect(assumed).toMatchObject([{ name: 'sealFriction', low: 0, high: 0.06 }]);
  });

  it('takes one end for both', () =>
    expect(
      numbersOf(worksheetSeal(withCylinder({ sealLow: 0.03, sealHigh: undefined }))),
    ).toMatchObject({
      low: 0.03,
      high: 0.03,
    }));

  it('grows with the square of the piston that is tried, less that of the rod', () => {
    const { efficiencyOf } = numbersOf(worksheetCylinder(withCylinder({ rodDiameter: 0.02 })));
    const at = (pistonDiameter: number, rodDiameter: number) =>
      efficiencyOf({ sealFriction: 0, pistonDiameter, rodDiameter });
    expect(at(0.04, 0.02)).toBeCloseTo(1, 12);
    expect(at(0.08, 0.04)).toBeCloseTo(4, 12);
  });

  it('refuses a range the wrong way round, and a seal that takes all', () => {
    const refused = (sealLow: number, sealHigh: number) =>
      refusalOf(worksheetCylinder(withCylinder({ sealLow, sealHigh })));
    expect(refused(0.06, 0.02)).toBe('rangeBackwards');
    expect(refused(0.5, 1)).toBe('sealTakesAll');
    expect(refused(-0.1, 0.1)).toBe('outOfRange');
  });
});

describe('the sheet of the hydraulic mill', () => {
  const figures = hydraulicFigures();
  const results = evaluateWorksheet(millD);

  it('gives what its parts give, put together by other code', () => {
    const { measured, predicted, efficiency, setting, agreement } = results;
    const is = (value: number, name: string, digits = 9) =>
      expect(value / (figures[name] ?? Number.NaN)).toBeCloseTo(1, digits);
    is(numbersOf(measured).stress, 'measured stress at top load (Pa)');
    is(numbersOf(measured).standardUncertainty, 'u(measured) (Pa)');
    is(numbersOf(predicted).stress, 'theory stress at top load (Pa)');
    is(numbersOf(efficiency).efficiency, 'own efficiency');
    is(numbersOf(setting).torque, 'setting for target');
    // Theirs knows the bore to half of what the worksheet takes for granted.
    is(numbersOf(predicted).standardUncertainty, 'u(theory) (Pa)', 1);
    expect(numbersOf(agreement).agreementNumber).toBeCloseTo(figures['E_n'] ?? Number.NaN, 1);
  });

  // By hand: 40 mm bore, 103 bar less 2.785: 12 593.4 N; over 2 × 52.5 mm² that is 119.94 MPa.
  it('predicts 119.94 MPa at its highest reading', () =>
    expect(numbersOf(results.predicted).stress / 1e6).toBeCloseTo(119.94, 2));

  it('has pressures for another band, a line, a check over the day, and no turns', () => {
    const bands = [{ name: '', bodyWidth: 0.0365, thickness: 0.0011, targetStress: 115e6 }];
    const { bands: found, line, day, turns } = evaluateWorksheet({ ...millD, bands });
    const other = numbersOf(found[0]?.byReadings as NonNullable<(typeof found)[0]>['byReadings']);
    expect(other.torque / (figures['other band: setting'] ?? 0)).toBeCloseTo(1, 9);
    expect(numbersOf(line).slope).toBeGreaterThan(10); // Pa for each Pa
    expect(numbersOf(day).cold.torque).toBeGreaterThan(numbersOf(day).warmLeast.torque);
    expect(turns).toEqual({ ready: false, waitsFor: ['readings'] });
  });

  it('may seem to pass on a little more than all of it, but not for certain', () => {
    const thinner = { ...millD, band: { ...millD.band, bodyWidth: 0.0435 } };
    expect(numbersOf(evaluateWorksheet(thinner).efficiency).efficiency).toBeGreaterThan(1);
    const wrong = { ...millD, tensioner: withCylinder({ pistonDiameter: 0.025 }) };
    expect(evaluateWorksheet(wrong).efficiency).toMatchObject({
      refusal: { code: 'ownEfficiencyAboveOne' },
      waitsFor: expect.arrayContaining(['tensioner.cylinder.pistonDiameter']),
    });
  });

  it('waits for its own boxes, never for those of a screw', () => {
    const use = { torque: 12 };
    const open = {
      ...millD,
      readings: [],
      use,
      tensioner: withCylinder({ noLoadPressure: undefined }),
    };
    expect(evaluateWorksheet(open).predicted).toMatchObject({ waitsFor: ['use.pressure'] });
    const idle = { ...open, use: { torque: 12, pressure: 1e5 }, tensioner };
    expect(evaluateWorksheet(idle).predicted).toMatchObject({
      waitsFor: ['readings', 'tensioner.cylinder.noLoadPressure'],
      refusal: { code: 'belowDrag' },
    });
  });

  it('names what it assumes: gauge, seal, no-load pressure', () => {
    const unknown = withCylinder({
      gaugeTop: undefined,
      gaugeClass: undefined,
      sealLow: undefined,
      sealHigh: undefined,
      noLoadPressure: undefined,
    });
    const { assumed, nextBoxes } = evaluateWorksheet({ ...millD, tensioner: unknown });
    expect(assumed.map(({ name }) => name).sort()).toEqual([
      'dragTorque',
      'pressure',
      'sealFriction',
    ]);
    expect(nextBoxes.map(({ path }) => path)).toContain('tensioner.cylinder.gaugeTop');
    for (const { gain } of nextBoxes) expect(gain).toBeGreaterThanOrEqual(0);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyWorksheet } from '../../src/core/worksheet/empty.ts';
import type { Worksheet } from '../../src/core/worksheet/inputs.ts';
import {
  evaluateWorksheet,
  predictedCurve,
  resultsOf,
  trialsOfPrediction,
  trialsOfStress,
  worksheetChain,
  worksheetMeasurement,
} from '../../src/core/worksheet.ts';
import { numbersOf, refusalOf } from './fixtures/ready.ts';
import { fullSheets } from './worksheet/fixtures/full-sheets.ts';
import { worksheetMillResults } from './worksheet/fixtures/mill-results.ts';
import { millA, millC, worksheetMills } from './worksheet/fixtures/mills.ts';

const letters = ['A', 'B', 'C', 'E', 'F'] as const;
const within = (actual: number, expected: number, relative: number) =>
  expect(Math.abs(actual / expected - 1)).toBeLessThan(relative);

describe.each(letters)('mill %s, worked by other code with 40 digits', (letter) => {
  const results = () => evaluateWorksheet(worksheetMills[letter]);
  const expected = worksheetMillResults[letter];

  it('finds the zero and the stretch with their intervals', () => {
    const { stretch, ...zero } = numbersOf(results().zero);
    within(zero.zero, expected.zero, 1e-6);
    within(zero.standardUncertainty, expected.zeroUncertainty, 1e-6);
    within(zero.low, expected.zeroLow, 1e-6);
    within(zero.high, expected.zeroHigh, 1e-6);
    within(zero.probabilityNoToe, expected.probabilityNoToe, 1e-6);
    within(stretch.stretch, expected.stretch, 1e-6);
    within(stretch.standardUncertainty, expected.stretchUncertainty, 1e-6);
    within(stretch.low, expected.stretchLow, 1e-6);
    within(stretch.high, expected.stretchHigh, 1e-6);
  });

  it('gives the measured stress with its uncertainty', () => {
    const measured = numbersOf(results().measured);
    within(measured.stress, expected.stress, 1e-6);
    within(measured.standardUncertainty, expected.stressUncertainty, 1e-6);
    within(measured.degreesOfFreedom, expected.degreesOfFreedom, 1e-5);
    within(measured.coverageFactor, expected.coverageFactor, 1e-6);
  });

  it('predicts the stress from the screw', () => {
    const predicted = numbersOf(results().predicted);
    within(predicted.stress, expected.theoryStress, 1e-8);
    within(predicted.standardUncertainty, expected.theoryUncertainty, 1e-4);
    within(numbersOf(results().screw).efficiency, expected.efficiency, 1e-8);
  });

  it('compares the two and finds the own efficiency', () => {
    within(numbersOf(results().agreement).agreementNumber, expected.agreementNumber, 1e-4);
    expect(numbersOf(results().agreement).verdict).toBe('agree');
    within(numbersOf(results().efficiency).efficiency, expected.ownEfficiency, 1e-6);
    within(
      numbersOf(results().efficiency).standardUncertainty,
      expected.efficiencyUncertainty,
      5e-3,
    );
  });

  it('gives the settings', () => {
    const setting = numbersOf(results().setting);
    within(setting.torque, expected.setting, 1e-6);
    within(setting.standardUncertainty, expected.settingUncertainty, 1e-3);
    within(numbersOf(results().theorySetting).torque, expected.theorySetting, 1e-8);
    within(numbersOf(results().expectedStretch).stretch, expected.targetStretch, 1e-10);
    const [band] = results().bands;
    if (band === undefined) throw new Error('the mill has another band');
    const other = numbersOf(band.byReadings);
    within(other.torque, expected.otherSetting, 1e-6);
    within(numbersOf(band.stretch).stretch, expected.otherStretch, 1e-10);
    within(other.standardUncertainty / other.stress, expected.otherRelative, 5e-3);
  });

  it('draws the line with errors in both, and reads the stiffness out of the turns', () => {
    const line = numbersOf(results().line);
    expect(line.readingsUsed).toBe(expected.readingsInLine);
    within(line.slope, expected.lineSlope, 1e-8);
    within(line.sdIntercept, expected.lineSdIntercept, 1e-8);
    within(line.sdSlope, expected.lineSdSlope, 1e-8);
    within(line.meanSquare, expected.lineMeanSquare, 1e-8);
    within(numbersOf(results().turns).totalStiffness, expected.totalStiffness, 5e-4);
  });

  it('agrees with its trials', () => {
    const trials = numbersOf(trialsOfStress(worksheetMills[letter]));
    within(trials.standardUncertainty, expected.trialsUncertainty, 0.02);
    within(trials.low, expected.trialsLow, 0.02);
    within(trials.high, expected.trialsHigh, 0.02);
  });
});

describe('the whole worksheet', () => {
  it('waits, without a refusal, while nothing is filled in', () => {
    const { ways, bands, guards, assumed, nextBoxes, dialRuns, verdict, rowReasons, ...others } =
      evaluateWorksheet(emptyWorksheet);
    const { opinions, remarks, causes, ...own } = others;
    const results = { ...own, ...opinions };
    expect([remarks, causes]).toEqual([[], undefined]);
    expect([...ways, ...bands, ...rowReasons]).toEqual([]);
    expect([guards, assumed, nextBoxes, dialRuns]).toEqual([[], [], [], undefined]);
    expect(verdict).toEqual({ grade: 'waiting', reasons: [] });
    for (const [name, outcome] of Object.entries(results)) {
      if (name === 'strands') continue; // equal wheels until a second one is filled in
      expect(outcome).toEqual({ ready: false, waitsFor: expect.any(Array) });
    }
  });

  it('lets a bad input stop only what depends on it', () => {
    const band = { ...millA.band, bodyWidth: undefined };
    const results = evaluateWorksheet({ ...millA, band });
    expect(results.predicted).toEqual({ ready: false, waitsFor: ['band.bodyWidth'] });
    expect(results.forces).toEqual({ ready: false, waitsFor: ['band.bodyWidth'] });
    expect(results.measured.ready).toBe(true);
    expect(results.setting.ready).toBe(true);
  });

  it('says which input is out of range', () => {
    const rig = { ...millA.rig, gaugeLength: -0.4 };
    const { measured, predicted } = evaluateWorksheet({ ...millA, rig });
    expect(measured).toEqual({
      ready: false,
      waitsFor: ['rig.gaugeLength'],
      refusal: { code: 'outOfRange', values: { was: -0.4 } },
    });
    expect(predicted.ready).toBe(true);
  });

  it('is plain data, so that a worker can send it', () => {
    const results = evaluateWorksheet(millC);
    expect(structuredClone(results)).toEqual(results);
  });

  it('predicts a curve that rises with torque from above the drag', () => {
    const { points } = numbersOf(predictedCurve(millA, [0.5, 5, 10, 14.5]));
    expect(points.map(({ torque }) => torque)).toEqual([5, 10, 14.5]);
    for (const { low, stress, high } of points) {
      expect(low).toBeLessThan(stress);
      expect(stress).toBeLessThan(high);
    }
    within(points.at(-1)?.stress ?? 0, worksheetMillResults.A.theoryStress, 1e-8);
    expect(refusalOf(predictedCurve(emptyWorksheet, [5]))).toBeUndefined();
  });

  it('shows one predicted interval: the curve ends on the trials where they are there', () => {
    const trials = numbersOf(trialsOfPrediction(millA));
    const [plain, top] = [undefined, trials].map(
      (known) => numbersOf(predictedCurve(millA, [14.5], known)).points[0],
    );
    expect(top?.low).toBeCloseTo(trials.low, 3);
    expect(top?.high).toBeCloseTo(trials.high, 3);
    const { low, high } = numbersOf(evaluateWorksheet(millA).predicted);
    expect(plain).toMatchObject({ low, high });
  });

  it('waits with the trials of the prediction for what the prediction waits for', () =>
    expect(trialsOfPrediction(emptyWorksheet)).toEqual(
      evaluateWorksheet(emptyWorksheet).predicted,
    ));

  it('is the same from parts at hand, which do not hang on what they do not read', () => {
    const chain = worksheetChain({ ...millA, rig: emptyWorksheet.rig, readings: [] });
    const measurement = worksheetMeasurement({ ...millA, mill: emptyWorksheet.mill, ways: [] });
    expect(resultsOf(millA, chain, measurement)).toEqual(evaluateWorksheet(millA));
  });
});

const strange = fc.oneof(
  fc.constantFrom(undefined, Number.NaN, 0, -1, 1e-300, 1e300, Number.POSITIVE_INFINITY),
  fc.double(),
);

/** Replaces a share of the numbers of a filled worksheet, anywhere in it: by strange ones, or by near ones. */
function spoiled(value: unknown, odd: (value: number) => unknown): unknown {
  if (typeof value === 'number') return odd(value);
  if (Array.isArray(value)) return value.map((item) => spoiled(item, odd));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, item]) => [name, spoiled(item, odd)]),
  );
}

const unit = fc.double({ min: 0, max: 1, noNaN: true });
const draws = fc.infiniteStream(
  fc.tuple(unit, strange, fc.double({ min: -2, max: 3, noNaN: true })),
);

const codesOf = (results: object) =>
  [...JSON.stringify(results).matchAll(/"code":"(\w+)"/g)].map(([, code]) => code);

describe('whatever the inputs are', () => {
  it('is answered without throwing, with finite numbers only', () => {
    const property = fc.property(
      fc.constantFrom(...fullSheets),
      unit,
      unit,
      draws,
      (sheet, share, strangeness, stream) => {
        const worksheet = spoiled(sheet, (value) => {
          const [chance, odd, factor] = stream.next().value as [number, unknown, number];
          if (chance > share ** 3) return value;
          return chance > strangeness * share ** 3 ? factor * value : odd;
        }) as Worksheet;
        const results = evaluateWorksheet({ ...worksheet, version: 1 });
        const text = JSON.stringify(results, (_, value) =>
          typeof value === 'number' && !Number.isFinite(value) ? 'not finite' : value,
        );
        expect(text).not.toContain('not finite');
      },
    );
    fc.assert(property, { numRuns: 300 });
  });

  it('is never called too far out while each number is within ten times of one that was', () => {
    const shift = fc.infiniteStream(fc.double({ min: -1, max: 1, noNaN: true }));
    const property = fc.property(fc.constantFrom(...fullSheets), shift, (sheet, stream) => {
      const worksheet = spoiled(sheet, (value) => value * 10 ** (stream.next().value as number));
      const results = evaluateWorksheet({ ...(worksheet as Worksheet), version: 1 });
      expect(codesOf(results)).not.toContain('beyondNumbers');
    });
    fc.assert(property, { numRuns: 100 });
  });

  it('is called too far out, by its name, where a number is', () => {
    const rig = { ...millA.rig, gaugeLength: 4e14 };
    expect(evaluateWorksheet({ ...millA, rig }).measured).toEqual({
      ready: false,
      waitsFor: ['rig.gaugeLength'],
      refusal: { code: 'beyondNumbers', values: {} },
    });
  });
});

/** What the lesson claims of the mill at Ottersleigh, against figures worked with 40 digits by other code (derived here). */
import { describe, expect, it } from 'vitest';
import { efficiency } from '../../../src/core/screw/torque.ts';
import { evaluateWorksheet } from '../../../src/core/worksheet.ts';
import { theoryMeetsMeasurement as model } from '../../../src/lessons/theory-meets-measurement/model.ts';
import { curveUpTo } from '../../../src/lessons/theory-meets-measurement/predicted-curve.ts';
import { REASONS, SHEETS } from '../../../src/lessons/theory-meets-measurement/reasons.ts';
import { readings } from '../../../src/lessons/theory-meets-measurement/results.worked.ts';
import type { SheetResult } from '../../../src/lessons/theory-meets-measurement/sheets.ts';
import { sheets } from '../../../src/lessons/theory-meets-measurement/sheets.worked.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';
import { OTTERSLEIGH, screwWith } from '../../../src/models/mills/ottersleigh.ts';
import {
  HIDDEN_THREAD_FRICTION,
  OTTERSLEIGH_SHEET,
} from '../../../src/models/mills/ottersleigh-sheet.ts';
import { worksheetMillResults } from '../../core/worksheet/fixtures/mill-results.ts';
import { millA } from '../../core/worksheet/fixtures/mills.ts';

const at = (inputs: Partial<InputsOf<typeof model>>) =>
  evaluated(model, inputsAt(model, inputs, 'metric'));
const worked = worksheetMillResults.A;

describe('Ottersleigh', () => {
  it.each([
    ['predictedStress', worked.theoryStress, 1e-8],
    ['predictedEfficiency', worked.efficiency, 1e-8],
    ['measuredStress', worked.stress, 1e-6],
    ['measuredExpanded', worked.stressUncertainty * worked.coverageFactor, 1e-5],
    ['agreement', worked.agreementNumber, 1e-4],
    ['stretch', worked.stretch, 1e-6],
    ['zeroBelow', -worked.zero, 1e-6],
    ['zeroBelowLeast', -worked.zeroHigh, 1e-6],
    ['zeroBelowMost', -worked.zeroLow, 1e-6],
    ['yorkSlope', worked.lineSlope, 1e-8],
    ['yorkShare', worked.lineSdSlope / worked.lineSlope, 1e-8],
    ['yorkIntercept', worked.lineIntercept, 1e-8],
    ['yorkScatter', worked.lineMeanSquare, 1e-8],
    ['readingsUsed', worked.readingsInLine, 0],
    ['ownEfficiency', worked.ownEfficiency, 1e-6],
    ['ownExpanded', 2 * worked.efficiencyUncertainty, 2e-3], // printed with three digits
    ['settingTorque', worked.setting, 1e-6],
  ] as const)('%s is %f', (name, expected, tolerance) => {
    const difference = Math.abs(at({})[name] - expected);
    expect(difference).toBeLessThanOrEqual(tolerance * Math.abs(expected));
  });

  it('gives what the worksheet gives for the same mill', () => {
    const { agreement, efficiency } = evaluateWorksheet(millA);
    expect(agreement.ready && agreement.agreementNumber).toBeCloseTo(at({}).agreement, 4);
    expect(efficiency.ready && efficiency.low).toBeCloseTo(at({}).ownLow, 6);
  });

  it('finds an interval that holds what the simulation had in its thread', () => {
    const { ownLow, ownHigh } = at({});
    const hidden = efficiency(screwWith(HIDDEN_THREAD_FRICTION));
    expect(hidden).toBeCloseTo(0.2952, 4);
    expect(hidden).toBeGreaterThan(ownLow);
    expect(hidden).toBeLessThan(ownHigh);
  });

  it('leaves the toe out of the line', () => {
    const inToe = readings.filter((reading) => reading.inToe);
    expect(inToe.map(({ torque }) => torque)).toEqual([1.5, 3]);
  });
});

describe('the reader’s line', () => {
  it('starts where the theory stands, with the theory’s agreement number', () => {
    const { lineStress, predictedStress, lineAgreement, agreement } = at({});
    expect(lineStress).toBeCloseTo(predictedStress, 3);
    expect(lineAgreement).toBeCloseTo(agreement, 12);
  });
  it('agrees perfectly once it is tuned, which says nothing', () => {
    const tuned = at({ efficiency: at({}).ownEfficiency });
    expect(tuned.lineAgreement).toBeCloseTo(0, 9);
    expect(tuned.lineMissed).toBe(0);
  });
  it.each([
    [0.15, 8],
    [0.42, 8],
  ])('at %f misses the error bars of %i readings', (efficiency, missed) =>
    expect(at({ efficiency }).lineMissed).toBe(missed),
  );
});

describe('the intercept', () => {
  it('gives the zero error for a drag, and the drag for no zero error, never both', () => {
    const { impliedDrag, yorkIntercept } = at({});
    expect(at({ assumedDrag: 0 }).zeroErrorStress).toBe(yorkIntercept);
    expect(at({ assumedDrag: impliedDrag }).zeroErrorStress).toBeCloseTo(0, 3);
  });
  it('with the drag that was measured agrees with the zero by all readings', () => {
    const { zeroBelowByLine, zeroBelowLeast, zeroBelowMost } = at({});
    expect(zeroBelowByLine).toBeGreaterThan(zeroBelowLeast);
    expect(zeroBelowByLine).toBeLessThan(zeroBelowMost);
  });
});

describe('the sheets', () => {
  const fitting = (pick: (result: SheetResult) => boolean) =>
    sheets.map((results) => results.flatMap((result, reason) => (pick(result) ? [reason] : [])));
  const result = (sheet: number, reason: number) => sheets[sheet]?.[reason] as SheetResult;

  it('are as many as they have names, each under every reason', () =>
    expect(sheets.map(({ length }) => length)).toEqual(SHEETS.map(() => REASONS.length)));
  it('have one reason each under which everything fits, none twice', () => {
    const right = fitting((one) => one.agrees && one.frictionFits && one.leadFits);
    expect(right.map(([reason]) => REASONS[reason ?? 4])).toEqual([
      'dryThread',
      'forgottenStrand',
      'nothing',
      'twoStarts',
    ]);
    expect(right.map(({ length }) => length)).toEqual([1, 1, 1, 1]);
  });
  it('cannot be told apart by the stress: three reasons of four bring sheet 1 into agreement', () =>
    expect(fitting((one) => one.agrees)).toEqual([[1, 2, 3], [3], [0, 2], [1, 2]]));
  it('disagree as they came in, except the one that is sound', () =>
    expect(sheets.map(([asItStands]) => asItStands?.agrees)).toEqual([false, false, true, false]));
  it('miss by two where a strand was forgotten, and by nothing else there', () => {
    const [sound, forgot] = [result(2, 0), result(1, 0)];
    expect(forgot.predicted.stress / sound.predicted.stress).toBeCloseTo(2, 12);
    expect(forgot.measured).toEqual(sound.measured);
    expect([forgot.frictionFits, forgot.leadFits]).toEqual([true, true]);
  });
  it('loosen more easily with two starts than with a dry thread, though neither lets go by itself', () => {
    const [dry, twoStarts] = [result(0, 0), result(3, 0)];
    expect(twoStarts.looseningTorque).toBeLessThan(dry.looseningTorque / 2);
    expect(twoStarts.looseningTorque).toBeGreaterThan(OTTERSLEIGH.dragTorque);
  });
  it('are drawn through the prediction at their highest torque', () => {
    const { predicted, topTorque, curve } = result(0, 0);
    const drag = OTTERSLEIGH.dragTorque;
    const last = curve.at(-1) ?? { torque: 0, stress: 0 };
    expect(curve[0]).toEqual({ torque: drag, stress: 0, low: 0, high: 0 });
    const slope = predicted.stress / (topTorque - drag);
    expect(last.stress / (last.torque - drag)).toBeCloseTo(slope, 3);
  });
});

describe('curveUpTo', () => {
  it('widens with torque and never falls below nought', () => {
    const widths = curveUpTo(OTTERSLEIGH_SHEET, 16).map(({ low, high }) => {
      expect(low).toBeGreaterThanOrEqual(0);
      return high - low;
    });
    expect(widths).toEqual([...widths].sort((a, b) => a - b));
  });
});

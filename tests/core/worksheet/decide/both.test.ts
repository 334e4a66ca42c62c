import { describe, expect, it } from 'vitest';
import { worksheetBoth } from '../../../../src/core/worksheet/decide/both.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { millA, worksheetMills } from '../fixtures/mills.ts';

const bothOf = (worksheet: Worksheet) => evaluateWorksheet(worksheet).both;
/** Mill A read so badly, up and down in turn, that its dial alone gives no stress. */
const vague: Worksheet = {
  ...millA,
  readings: millA.readings.map((row, i) => ({
    ...row,
    dial: (row.dial as number) + 60e-6 * (-1) ** i,
  })),
};

describe('both together', () => {
  it.each(Object.entries(worksheetMills))('of mill %s is the weighted mean, by hand', (_, mill) => {
    const results = evaluateWorksheet(mill);
    const [measured, predicted] = [numbersOf(results.measured), numbersOf(results.predicted)];
    const [a, b] = [measured.standardUncertainty ** 2, predicted.standardUncertainty ** 2];
    const both = numbersOf(results.both);
    const mean = (b * measured.stress + a * predicted.stress) / (a + b);
    expect(both.stress / mean).toBeCloseTo(1, 12);
    expect(both.standardUncertainty ** 2 / ((a * b) / (a + b))).toBeCloseTo(1, 12);
    expect(both.expandedUncertainty / both.standardUncertainty).toBeCloseTo(1.959964, 6);
    expect(both.high - both.low).toBeCloseTo(2 * both.expandedUncertainty, 3);
    expect(both.joined).toBe('mean');
  });

  it('is not given where the two disagree', () => {
    const friction = { kind: 'friction', low: 0.02, high: 0.03 } as const;
    const off = { ...millA, tensioner: { ...millA.tensioner, friction } };
    expect(refusalOf(bothOf(off))).toBe('theyDisagree');
  });

  it('is not given where the efficiency that was typed came from these readings', () => {
    const own = numbersOf(evaluateWorksheet(millA).efficiency);
    const withEfficiency = (low: number, high: number) => ({
      ...millA,
      tensioner: { ...millA.tensioner, friction: { kind: 'efficiency', low, high } as const },
    });
    const rounded = (value: number) => Math.round(1000 * value) / 1000;
    const tuned = withEfficiency(rounded(own.low), rounded(own.high));
    expect(refusalOf(bothOf(tuned))).toBe('tunedFromReadings');
    expect(bothOf(withEfficiency(own.low - 0.02, own.high + 0.02)).ready).toBe(true);
    expect(bothOf(withEfficiency(own.low, own.high + 0.05)).ready).toBe(true);
  });

  it('is joined inside the fit where the dial alone gives no stress', () => {
    const results = evaluateWorksheet(vague);
    expect(refusalOf(results.measured)).toBe('zeroTooVague');
    const [both, predicted] = [numbersOf(results.both), numbersOf(results.predicted)];
    expect(both.joined).toBe('inFit');
    // Hardly more than the theory says by itself: steel, dial and warmth are in it once more.
    expect(both.standardUncertainty).toBeLessThan(1.05 * predicted.standardUncertainty);
    const { stretch, standardUncertainty } = numbersOf(results.zero).stretch;
    expect(both.standardUncertainty / both.stress).toBeLessThan(
      0.5 * (standardUncertainty / stretch),
    );
    expect(Math.abs(both.stress / predicted.stress - 1)).toBeLessThan(0.1);
    expect(both.high - both.stress).toBeCloseTo(both.expandedUncertainty, 3);
  });

  it('nor inside the fit where they disagree', () => {
    const results = evaluateWorksheet(vague);
    const { stress, ...predicted } = numbersOf(results.predicted);
    const far = { ...predicted, stress: 20 * stress };
    const both = worksheetBoth(vague, { ...results, predicted: far });
    expect(refusalOf(both)).toBe('theyDisagree');
  });

  it.each(Object.entries(worksheetMills))('of mill %s is narrower than either', (_, mill) => {
    const { both, measured, predicted } = evaluateWorksheet(mill);
    const others = [numbersOf(measured), numbersOf(predicted)];
    expect(numbersOf(both).expandedUncertainty).toBeLessThan(
      Math.min(...others.map(({ expandedUncertainty }) => expandedUncertainty)),
    );
  });

  it('waits for whatever the two wait for', () => {
    const band = { ...millA.band, bodyWidth: undefined };
    expect(bothOf({ ...millA, band })).toEqual({ ready: false, waitsFor: ['band.bodyWidth'] });
    expect(refusalOf(bothOf({ ...millA, readings: millA.readings.slice(0, 3) }))).toBe(
      'tooFewReadings',
    );
  });
});

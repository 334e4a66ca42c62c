import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ThicknessFrom } from '../../../../src/core/worksheet/inputs.ts';
import {
  areaDoubt,
  worksheetBody,
  worksheetSection,
  worksheetStrands,
} from '../../../../src/core/worksheet/predict/section.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA, millC } from '../fixtures/mills.ts';

describe('worksheetSection', () => {
  it('matches the hand-worked case: 29 mm by 1 mm is 29 mm²', () =>
    expect(numbersOf(worksheetSection(millA)).area).toBeCloseTo(29e-6, 12));

  it('refuses a body wider than the band over its teeth, and checks nothing while that is empty', () => {
    const band = { ...millA.band, bodyWidth: 0.036 };
    expect(worksheetSection({ ...millA, band })).toEqual({
      ready: false,
      waitsFor: ['band.bodyWidth', 'band.widthOverTeeth'],
      refusal: {
        code: 'bodyWiderThanBand',
        values: { bodyWidth: 0.036, widthOverTeeth: 0.035 },
      },
    });
    const plain = { ...band, bodyWidth: 0.035 }; // a band without teeth
    expect(worksheetSection({ ...millA, band: plain }).ready).toBe(true);
    const open = { ...band, widthOverTeeth: undefined };
    expect(worksheetSection({ ...millA, band: open }).ready).toBe(true);
    const unread = { ...band, widthOverTeeth: Number.NaN };
    expect(worksheetSection({ ...millA, band: unread })).toMatchObject({
      waitsFor: ['band.widthOverTeeth'],
    });
  });

  it('joins the scatter of several readings with the micrometer’s own half-width', () => {
    const widthOf = (thicknessScatter?: number) =>
      numbersOf(worksheetBody('band', { ...millA.band, thicknessScatter }, 'micrometer')).operands
        .thicknessHalfWidth;
    expect(widthOf()).toBe(0.01e-3);
    expect(widthOf(0.02e-3)).toBeCloseTo(Math.hypot(0.01e-3, Math.sqrt(3) * 0.02e-3), 12);
    expect(widthOf(Number.NaN)).toBe(0.01e-3);
  });

  it('knows a thickness by the tool: a micrometer best, then a caliper, then a label', () => {
    const halfWidthOf = (from: ThicknessFrom) =>
      numbersOf(worksheetBody('band', millA.band, from)).operands.thicknessHalfWidth;
    expect(halfWidthOf('micrometer')).toBe(0.01e-3);
    expect(halfWidthOf('caliper')).toBe(0.02e-3);
    expect(halfWidthOf('label')).toBeCloseTo(0.03 * 1e-3, 12);
    expect(halfWidthOf('unasked')).toBe(halfWidthOf('label'));
  });

  it('waits for the boxes by their path', () => {
    const band = { bodyWidth: undefined, thickness: undefined };
    expect(worksheetBody('bands.2', band, 'micrometer')).toEqual({
      ready: false,
      waitsFor: ['bands.2.bodyWidth', 'bands.2.thickness'],
    });
  });
});

describe('areaDoubt', () => {
  const body = { bodyWidth: 29e-3, thickness: 1e-3, thicknessHalfWidth: 0.01e-3 };

  it('matches the hand-worked case: 0.5 mm in 29 and 0.01 mm in 1, both over √3', () =>
    expect(areaDoubt(body)).toBeCloseTo(Math.hypot(0.5 / 29, 0.01) / Math.sqrt(3), 12));

  it('is smaller for a larger band', () =>
    fc.assert(
      fc.property(fc.double({ min: 1.01, max: 10, noNaN: true }), (factor) => {
        const larger = { ...body, bodyWidth: factor * 29e-3, thickness: factor * 1e-3 };
        expect(areaDoubt(larger)).toBeLessThan(areaDoubt(body));
      }),
    ));
});

describe('worksheetStrands', () => {
  const lean = (mill: typeof millC.mill) => worksheetStrands({ ...millC, mill });

  it('matches the hand-worked case: 600 and 450 mm at 1500 mm lean by asin 0.05', () =>
    expect(numbersOf(lean(millC.mill)).strandHalfAngle).toBeCloseTo(Math.asin(0.05), 12));

  it('takes an empty second wheel for one like the first, filled or not', () => {
    expect(numbersOf(worksheetStrands(millA)).strandHalfAngle).toBe(0);
    const empty = {
      wheelDiameter1: undefined,
      wheelDiameter2: undefined,
      centreDistance: undefined,
    };
    expect(numbersOf(lean(empty)).strandHalfAngle).toBe(0);
  });

  it('needs no distance between two wheels of one size', () => {
    const alike = { wheelDiameter1: 0.5, wheelDiameter2: 0.5, centreDistance: undefined };
    expect(numbersOf(lean(alike)).strandHalfAngle).toBe(0);
    expect(lean({ ...alike, wheelDiameter2: 0.49 }).ready).toBe(false);
    expect(lean({ ...alike, centreDistance: 0.4 }).ready).toBe(false);
  });

  it.each(['wheelDiameter1', 'centreDistance'])(
    'waits for the %s where the second wheel is known',
    (box) =>
      expect(lean({ ...millC.mill, [box]: undefined })).toEqual({
        ready: false,
        waitsFor: [`mill.${box}`],
      }),
  );

  it('waits for a second wheel that cannot be one', () =>
    expect(lean({ ...millC.mill, wheelDiameter2: -0.45 })).toEqual({
      ready: false,
      waitsFor: ['mill.wheelDiameter2'],
      refusal: { code: 'outOfRange', values: { was: -0.45 } },
    }));

  it('refuses wheels that overlap', () => {
    expect(lean({ ...millC.mill, centreDistance: 0.525 })).toEqual({
      ready: false,
      waitsFor: ['mill.wheelDiameter1', 'mill.wheelDiameter2', 'mill.centreDistance'],
      refusal: {
        code: 'wheelsOverlap',
        values: { wheelDiameter1: 0.6, wheelDiameter2: 0.45, centreDistance: 0.525 },
      },
    });
    expect(lean({ ...millC.mill, centreDistance: 0.526 }).ready).toBe(true);
  });
});

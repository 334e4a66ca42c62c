import { describe, expect, it } from 'vitest';
import { looksLikeMarks } from '../../../../src/core/worksheet/measure/dial-marks.ts';
import { type millA, worksheetMills } from '../fixtures/mills.ts';

const mm = 1e-3;
const inch = 25.4e-3;
const dialsOf = ({ readings }: typeof millA) =>
  readings.flatMap(({ dial }) => (dial === undefined ? [] : [dial]));

describe('looksLikeMarks', () => {
  it.each(Object.entries(worksheetMills))('finds none in mill %s', (_, mill) =>
    expect(looksLikeMarks(dialsOf(mill), mill.rig.graduation)).toBe(false),
  );

  it.each([
    [[20, 9, 5, 2], mm, 0.01 * mm, true],
    [[0, 1, 2], mm, 0.01 * mm, true],
    [[0, 1, 1], mm, 0.01 * mm, false], // within what a band does
    [[20, 9, 5, 2.31], mm, 0.01 * mm, false],
    [[20, 9], mm, 0.01 * mm, false],
    [[15, 12, 8], inch, 0.001 * inch, true],
    [[0.15, 0.12, 0.08], inch, 0.001 * inch, false],
    [[2, 3, 4], mm, 0.1 * mm, false],
    [[20, 9, 5, 2], mm, undefined, false],
  ])('judges %j times %s m on a dial graduated to %s m: %s', (marks, unit, graduation, is) =>
    expect(
      looksLikeMarks(
        marks.map((mark) => mark * unit),
        graduation,
      ),
    ).toBe(is),
  );
});

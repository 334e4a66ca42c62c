import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyWorksheet } from '../../../../src/core/worksheet/empty.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { evenly } from '../../../evenly.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { derivedOf } from '../fixtures/derived-of.ts';
import { millA } from '../fixtures/mills.ts';

const SETTING = derivedOf('A', 'wrench for target, from theory (N m)');

const noteOf = (worksheet: Worksheet, second: Partial<Worksheet['second']>) => {
  const span = derivedOf('A', 's free strand (m)');
  const note = derivedOf('A', 'pitch, free strand wheel to wheel (Hz)');
  return numbersOf(
    evaluateWorksheet({ ...worksheet, second: { ...worksheet.second, span, note, ...second } })
      .opinions.note,
  );
};

describe('a second opinion', () => {
  it('is held against the measurement at its torque, and shows the prediction', () => {
    const note = noteOf(millA, { torque: SETTING });
    expect(note.torque).toBe(SETTING);
    expect(note.predicted?.stress).toBeCloseTo(110e6, -3);
    const { atUse } = evaluateWorksheet({ ...millA, use: { torque: SETTING } });
    expect(note.measured?.stress).toBe(numbersOf(atUse).stress);
    const apart = note.stress - numbersOf(atUse).stress;
    const widths = Math.hypot(note.expandedUncertainty, numbersOf(atUse).expandedUncertainty);
    expect(note.agreementNumber).toBeCloseTo(apart / widths, 12);
    expect(note.likelyHarmonic).toBeUndefined();
  });

  it('takes the torque in use where none is told, and stands alone where there is none', () => {
    expect(noteOf({ ...millA, use: { torque: 9 } }, {}).torque).toBe(9);
    const alone = noteOf(millA, {});
    expect(alone).not.toHaveProperty('agreementNumber');
    expect(alone).not.toHaveProperty('measured');
  });

  it('is held against the prediction where nothing is measured', () => {
    const note = noteOf({ ...millA, readings: [] }, { torque: SETTING });
    expect(note.measured).toBeUndefined();
    expect(Math.abs(note.agreementNumber ?? Number.NaN)).toBeLessThan(1);
  });

  it('suspects a harmonic where the stress is four times that', () => {
    const note = 2 * derivedOf('A', 'pitch, free strand wheel to wheel (Hz)');
    expect(noteOf(millA, { torque: SETTING, note }).likelyHarmonic).toBe(2);
  });

  it('is total: whatever stands in the boxes, nothing is thrown and nothing is endless', () => {
    const box = fc.oneof(
      fc.constant(undefined),
      evenly(-3, 4).map((exponent) => 10 ** exponent),
      fc.constant(-1),
      fc.constant(1e20),
    );
    const note = fc.option(evenly(5, 1000), { nil: undefined });
    const second = fc.record({
      torque: box,
      span: fc.oneof(evenly(0.05, 3), box),
      ends: fc.constantFrom('wheels' as const, 'guides' as const),
      note,
      harmonic: fc.oneof(evenly(1, 6), box),
      force: box,
      deflection: box,
      tightening: box,
      loosening: box,
    });
    const sizes = fc.record({ bodyWidth: box, thickness: box, youngsModulus: box });
    fc.assert(
      fc.property(second, fc.option(sizes), (second, sizes) => {
        const band = { ...millA.band, ...sizes, widthOverTeeth: undefined };
        const { opinions } = evaluateWorksheet({ ...millA, readings: [], band, second });
        for (const opinion of Object.values(opinions))
          if (opinion.ready) expect(opinion.stress).toBeGreaterThan(0);
      }),
      { numRuns: 500, seed: 1 },
    );
  });

  it('waits on an empty sheet', () => {
    const { opinions } = evaluateWorksheet(emptyWorksheet);
    expect(Object.values(opinions).map(({ ready }) => ready)).toEqual([false, false, false]);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import {
  stressOfStretch,
  worksheetStressScale,
} from '../../../../src/core/worksheet/measure/stress.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { derivedOf } from '../fixtures/derived-of.ts';
import { millA, millC, millF } from '../fixtures/mills.ts';

describe('worksheetStressScale', () => {
  it('corrects for half of what a tilt of 3° loses, 0.178 %, and doubts as much', () => {
    const { misalignment } = numbersOf(worksheetStressScale(millA));
    expect(misalignment.value).toBeCloseTo(0.99822, 5);
    expect(misalignment.value + misalignment.halfWidth).toBe(1);
  });

  it.each([
    ['steel', millA, 0],
    ['aluminium', millC, 3 * 11.5e-6],
    ['wood', millF, 3 * 7.5e-6],
  ] as const)('doubts a bar of %s by what 3 K make it grow beside the band', (_, mill, strain) =>
    expect(numbersOf(worksheetStressScale(mill)).warmthTogether.halfWidth).toBeCloseTo(strain, 12),
  );

  it('waits for what the rig and the steel still lack', () => {
    const rig = { ...millA.rig, gaugeLength: undefined, graduation: undefined };
    expect(worksheetStressScale({ ...millA, rig })).toEqual({
      ready: false,
      waitsFor: ['rig.gaugeLength', 'rig.graduation'],
    });
    const band = { ...millA.band, youngsModulus: undefined, youngsModulusHalfWidth: undefined };
    const vague = { ...millA.rig, gaugeLengthHalfWidth: undefined };
    expect(worksheetStressScale({ ...millA, band, rig: vague })).toEqual({
      ready: false,
      waitsFor: ['band.youngsModulus', 'band.youngsModulusHalfWidth', 'rig.gaugeLengthHalfWidth'],
    });
  });

  it('doubts 1 K between band and bar by what it makes steel grow', () =>
    expect(numbersOf(worksheetStressScale(millA)).warmthApart).toEqual({
      value: 0,
      halfWidth: 11.5e-6,
      shape: 'rectangular',
    }));
});

describe('warmth that was read', () => {
  const warmed = (mill: Worksheet, change: number) =>
    numbersOf(worksheetStressScale({ ...mill, rig: { ...mill.rig, warmed: change } }));

  it.each([
    ['C', millC],
    ['F', millF],
  ] as const)(
    'takes back what 3 K feign on the bar of mill %s, and doubts 1 K of it',
    (letter, mill) => {
      const { warmthTogether, youngsModulus } = warmed(mill, 3);
      const feigned = derivedOf(letter, 'false stress, band and bar +3 K (MPa)') * 1e6;
      expect(youngsModulus.value * warmthTogether.value).toBeCloseTo(-feigned, 3);
      expect(warmthTogether.halfWidth).toBeCloseTo(Math.abs(warmthTogether.value) / 3, 12);
    },
  );

  it('changes nothing on a steel bar', () =>
    expect(warmed(millA, 10).warmthTogether).toMatchObject({ value: 0, halfWidth: 0 }));

  it('is refused where it is no number', () =>
    expect(
      refusalOf(worksheetStressScale({ ...millC, rig: { ...millC.rig, warmed: Number.NaN } })),
    ).toBe('outOfRange'));
});

describe('stressOfStretch', () => {
  const exact = {
    youngsModulus: 205e9,
    gaugeLength: 0.5,
    misalignment: 1,
    dial: 0,
    warmthTogether: 0,
    warmthApart: 0,
    stretch: 0.5e-3,
    drag: 0,
  };

  it('matches the hand-worked case: 0.5 mm on 500 mm at 205 GPa is 205 MPa', () =>
    expect(stressOfStretch(exact)).toBeCloseTo(205e6, 0));

  it('adds the errors of dial and drag to the stretch, and those of warmth to the strain', () => {
    expect(stressOfStretch({ ...exact, dial: 1e-5, drag: -1e-5 })).toBeCloseTo(205e6, 0);
    const warm = { ...exact, warmthTogether: 1e-5, warmthApart: 2e-5 };
    expect(stressOfStretch(warm)).toBeCloseTo(205e9 * 1.03e-3, 0);
  });

  it('is higher where the bar shows less of the strain', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.9, max: 0.999, noNaN: true }), (misalignment) => {
        expect(stressOfStretch({ ...exact, misalignment })).toBeCloseTo(205e6 / misalignment, 0);
      }),
    ));
});

import { describe, expect, it } from 'vitest';
import { emptyWorksheet } from '../../../src/core/worksheet/empty.ts';
import {
  loadIn,
  loadName,
  loadReading,
  readLoadDoubt,
  scaleHalfWidth,
  wrenchShare,
} from '../../../src/core/worksheet/load.ts';
import { millD } from './fixtures/hydraulic-mill.ts';

const screw = emptyWorksheet.tensioner;
const cylinder = millD.tensioner;
const gauge = (changed: Partial<typeof cylinder.cylinder>) => ({
  ...cylinder,
  cylinder: { ...cylinder.cylinder, ...changed },
});

describe('the load', () => {
  it('is the torque on a screw and the pressure in a cylinder, each in a box of its own', () => {
    expect([loadName(screw), loadName(cylinder)]).toEqual(['torque', 'pressure']);
    const boxes = { torque: 12, pressure: 9e6 };
    expect(loadIn({ tensioner: screw }, boxes)).toBe(12);
    expect(loadIn({ tensioner: cylinder }, boxes)).toBe(9e6);
    expect(loadIn({ tensioner: cylinder }, { torque: 12 })).toBeUndefined();
  });

  it('is read to a hundredth, but never better than 0.1 N·m or half a bar', () => {
    expect(readLoadDoubt(loadReading(screw), 30)).toBeCloseTo(0.3, 12);
    expect(readLoadDoubt(loadReading(screw), 1)).toBe(0.1);
    expect(readLoadDoubt(loadReading(cylinder), 1e7)).toBeCloseTo(1e5, 6);
    expect(readLoadDoubt(loadReading(cylinder), 1e6)).toBe(0.5e5);
  });

  it('is off by 4 % on a wrench, and on a gauge by its class of full scale wherever it points', () => {
    expect(scaleHalfWidth(screw, 20)).toBeCloseTo(0.8, 12);
    // A gauge to 160 bar of class 1.6: 2.56 bar.
    for (const pressure of [1e6, 1.5e7])
      expect(scaleHalfWidth(cylinder, pressure)).toBeCloseTo(2.56e5, 6);
  });

  it('is off on a wrench by its accuracy, once that is told', () => {
    expect(scaleHalfWidth({ ...screw, wrenchClass: 0.02 }, 20)).toBeCloseTo(0.4, 12);
    expect(wrenchShare({ wrenchClass: 0.06 })).toBe(0.06);
    for (const wrenchClass of [undefined, Number.NaN, 0])
      expect(wrenchShare({ wrenchClass })).toBe(0.04);
  });

  it('is off by a class of 2.5 of twice the pressure where nobody has described the gauge', () => {
    const unknown = gauge({ gaugeTop: undefined, gaugeClass: undefined });
    expect(scaleHalfWidth(unknown, 1e7)).toBeCloseTo(5e5, 6);
    expect(scaleHalfWidth(gauge({ gaugeClass: undefined }), 1e7)).toBeCloseTo(4e5, 6);
    expect(scaleHalfWidth(gauge({ gaugeTop: undefined }), 1e7)).toBeCloseTo(3.2e5, 6);
  });
});

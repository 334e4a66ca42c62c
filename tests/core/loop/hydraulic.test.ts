import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  hydraulicThrust,
  oilGrowth,
  oilStiffness,
  pistonArea,
  pressureForThrust,
} from '../../../src/core/loop/hydraulic.ts';
import { evenly } from '../../evenly.ts';

const cylinder = { bore: 0.04, sealFriction: 400 };
const anyCylinder = fc.record({
  bore: fc.double({ min: 0.01, max: 0.1, noNaN: true }),
  sealFriction: evenly(0, 1000),
});
const anyThrust = fc.double({ min: 1000, max: 1e5, noNaN: true });
const strokes = ['pumping', 'lettingDown'] as const;

describe('pistonArea', () => {
  it('of a 40 mm bore is 1256.6 mm², definition', () =>
    expect(pistonArea(cylinder)).toBeCloseTo(1256.637e-6, 9));
  it('refuses no bore', () =>
    expect(() => pistonArea({ bore: 0 })).toThrow(/bore must be above 0 m/));
});

describe('hydraulicThrust', () => {
  it('loses the seal friction while pumping: 12 MPa on 40 mm gives 14 680 N, derived here', () =>
    expect(hydraulicThrust(cylinder, 12e6, 'pumping')).toBeCloseTo(14_679.644737, 5));
  it('keeps it while letting down: twice the friction lies between', () =>
    expect(
      hydraulicThrust(cylinder, 12e6, 'lettingDown') - hydraulicThrust(cylinder, 12e6, 'pumping'),
    ).toBeCloseTo(800, 8));
  it('is nothing until the pressure has overcome the seal', () =>
    expect(hydraulicThrust(cylinder, 0.1e6, 'pumping')).toBe(0));
  it('refuses a suction', () =>
    expect(() => hydraulicThrust(cylinder, -1, 'pumping')).toThrow(
      /pressure must be at least 0 Pa/,
    ));
});

describe('pressureForThrust', () => {
  it.each(strokes)('undoes hydraulicThrust while %s', (stroke) =>
    fc.assert(
      fc.property(anyCylinder, anyThrust, (any, thrust) => {
        const pressure = pressureForThrust(any, thrust, stroke);
        expect(hydraulicThrust(any, pressure, stroke) / thrust).toBeCloseTo(1, 10);
      }),
    ),
  );
  it('of no thrust is the pressure that the seal holds back', () => {
    expect(pressureForThrust(cylinder, 0, 'pumping')).toBeCloseTo(400 / 1256.637e-6, 0);
    expect(pressureForThrust(cylinder, 0, 'lettingDown')).toBe(0);
  });
  it('refuses a pull, and a seal that helps', () => {
    expect(() => pressureForThrust(cylinder, -1, 'pumping')).toThrow(/thrust must be at least 0 N/);
    expect(() => pressureForThrust({ ...cylinder, sealFriction: -1 }, 1, 'pumping')).toThrow(
      /sealFriction must be at least 0 N/,
    );
  });
});

describe('shut-in oil', () => {
  const oil = { column: 0.1, bulkModulus: 1.6e9, expansion: 7e-4 };

  it('is a spring of 20.1 MN/m: 1.6 GPa on 1256.6 mm² over 100 mm, by hand', () =>
    expect(oilStiffness(cylinder, oil) / 1e6).toBeCloseTo(20.10619, 5));
  it('is half as stiff in a column twice as long', () =>
    expect(oilStiffness(cylinder, { ...oil, column: 0.2 })).toBeCloseTo(
      oilStiffness(cylinder, oil) / 2,
      6,
    ));
  it('grows by 0.7 mm in 100 mm for 10 K, and shrinks as much', () => {
    expect(oilGrowth(oil, 10)).toBeCloseTo(0.7e-3, 12);
    expect(oilGrowth(oil, -10)).toBeCloseTo(-0.7e-3, 12);
  });
  it('refuses what cannot be', () => {
    expect(() => oilStiffness(cylinder, { ...oil, column: 0 })).toThrow('column must be above 0 m');
    expect(() => oilStiffness(cylinder, { ...oil, bulkModulus: 0 })).toThrow('bulkModulus must be');
    expect(() => oilGrowth({ ...oil, column: 0 }, 1)).toThrow('column must be above 0 m');
    expect(() => oilGrowth({ ...oil, expansion: -1 }, 1)).toThrow('expansion must be at least 0');
    expect(() => oilGrowth(oil, 61)).toThrow('temperatureChange must be between -60 and 60 K');
  });
});

import { describe, expect, it } from 'vitest';
import { benchMill } from '../../src/core/bench-mill.ts';
import { efficiency, isSelfLocking } from '../../src/core/screw.ts';

const mills = Array.from({ length: 200 }, (_, seed) => benchMill(seed));

describe('benchMill', () => {
  it('is the same again from the same seed, and another from another', () => {
    expect(benchMill(7)).toEqual(benchMill(7));
    expect(benchMill(7)).not.toEqual(benchMill(8));
  });
  it('is always a mill that holds: self-locking, 8 to 40 % efficient', () => {
    for (const { hidden } of mills) {
      expect(isSelfLocking(hidden.screw)).toBe(true);
      expect(efficiency(hidden.screw)).toBeGreaterThan(0.08);
      expect(efficiency(hidden.screw)).toBeLessThan(0.4);
    }
  });
  it('keeps to common practice: D/t of at least 350, wheels apart, room for the gauge', () => {
    for (const { known } of mills) {
      expect(known.wheelDiameter / known.thickness).toBeGreaterThan(350);
      expect(known.centreDistance - known.wheelDiameter).toBeGreaterThanOrEqual(0.7 - 1e-12);
      expect(known.centreDistance).toBeGreaterThan(known.gaugeLength + 0.3);
      const steps = known.dialTurn / known.dialStep;
      expect(steps).toBeCloseTo(Math.round(steps), 9);
    }
  });
  it('draws both kinds of thrust bearing, both signs of coil set, all threads and dials', () => {
    const kinds = (pick: (mill: (typeof mills)[number]) => unknown) =>
      new Set(mills.map(pick)).size;
    expect(kinds((mill) => mill.known.collarIsBearing)).toBe(2);
    expect(kinds((mill) => Math.sign(mill.hidden.coilShift))).toBe(2);
    expect(kinds((mill) => mill.known.screwThread)).toBe(4);
    expect(kinds((mill) => mill.known.dialStep)).toBe(3);
  });
  it.each([-1, 1.5, 2 ** 32])('refuses the seed %s', (seed) =>
    expect(() => benchMill(seed)).toThrow('seed must be a whole number between 0 and 4294967295'),
  );
});

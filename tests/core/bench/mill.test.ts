import { describe, expect, it } from 'vitest';
import { type BenchMill, benchMill } from '../../../src/core/bench/mill.ts';
import { efficiency, isSelfLocking } from '../../../src/core/screw/torque.ts';

const mills = (count = 200): BenchMill[] =>
  Array.from({ length: count }, (_, seed) => benchMill(seed));

type Pick = (mill: BenchMill) => number;

/** What a thousand mills have, in order. */
const sortedOf = (pick: Pick, of: (mill: BenchMill) => boolean = () => true): Float64Array =>
  Float64Array.from(mills(1000).filter(of).map(pick)).sort();

/** Passes values that lie in a range and come within a 50th of it to both ends. */
function expectToFill(sorted: Float64Array, low: number, high: number): void {
  const [least, most] = [sorted.at(0), sorted.at(-1)];
  const near = (high - low) / 50;
  expect(least).toBeGreaterThanOrEqual(low);
  expect(least).toBeLessThan(low + near);
  expect(most).toBeLessThanOrEqual(high);
  expect(most).toBeGreaterThan(high - near);
}

describe('benchMill', () => {
  it('is the same again from the same seed, and another from another', () => {
    expect(benchMill(7)).toEqual(benchMill(7));
    expect(benchMill(7)).not.toEqual(benchMill(8));
  });
  it('is always a mill that holds: self-locking, 8 to 40 % efficient', () => {
    for (const { hidden } of mills()) {
      expect(isSelfLocking(hidden.screw)).toBe(true);
      expect(efficiency(hidden.screw)).toBeGreaterThan(0.08);
      expect(efficiency(hidden.screw)).toBeLessThan(0.4);
    }
  });
  it('keeps to common practice: D/t of at least 350, wheels apart, room for the gauge', () => {
    for (const { known } of mills()) {
      expect(known.wheelDiameter / known.thickness).toBeGreaterThan(350);
      expect(known.centreDistance - known.wheelDiameter).toBeGreaterThanOrEqual(0.7 - 1e-12);
      expect(known.centreDistance).toBeGreaterThan(known.gaugeLength + 0.3);
      const steps = known.dialTurn / known.dialStep;
      expect(steps).toBeCloseTo(Math.round(steps), 9);
    }
  });
  it('draws both kinds of thrust bearing, both signs of coil set, all threads and dials', () => {
    const kinds = (pick: (mill: BenchMill) => unknown) => new Set(mills().map(pick)).size;
    expect(kinds((mill) => mill.known.collarIsBearing)).toBe(2);
    expect(kinds((mill) => Math.sign(mill.hidden.coilShift))).toBe(2);
    expect(kinds((mill) => mill.known.screwThread)).toBe(4);
    expect(kinds((mill) => mill.known.dialStep)).toBe(3);
  });
  it.each<[string, Pick, number, number, number]>([
    ['collarDiameter', ({ known }) => known.collarDiameter, 0.028, 0.04, 0.001],
    ['bodyWidth', ({ known }) => known.bodyWidth, 0.026, 0.036, 0.0005],
    ['wheelDiameter', ({ known }) => known.wheelDiameter, 0.4, 0.7, 0.01],
    ['gaugeLength', ({ known }) => known.gaugeLength, 0.4, 0.7, 0.05],
    [
      'centreDistance less wheelDiameter',
      ({ known }) => known.centreDistance - known.wheelDiameter,
      0.7,
      1.2,
      0.01,
    ],
  ])('draws %s in whole steps from one end to the other', (_, pick, low, high, step) => {
    const sorted = sortedOf(pick);
    expect(sorted.at(0)).toBeCloseTo(low, 12);
    expect(sorted.at(-1)).toBeCloseTo(high, 12);
    expect(new Set(sorted.map((size) => Math.round(size / step))).size).toBe(
      Math.round((high - low) / step) + 1,
    );
    for (const size of sorted)
      expect(Math.abs(size / step - Math.round(size / step))).toBeLessThan(1e-9);
  });
  it.each<[string, Pick, number, number]>([
    ['youngsModulus', ({ hidden }) => hidden.youngsModulus, 202e9, 208e9],
    ['threadFriction', ({ hidden }) => hidden.screw.threadFriction, 0.1, 0.18],
    ['dragTorque', ({ hidden }) => hidden.dragTorque, 0.4, 2],
    ['frameStiffness', ({ hidden }) => hidden.frameStiffness, 4e6, 12e6],
    ['slackTurns', ({ hidden }) => hidden.slackTurns, 0.2, 1],
    ['coilStress', ({ hidden }) => hidden.coilStress, 2e6, 9e6],
    ['repeatability', ({ hidden }) => hidden.repeatability, 2e-6, 6e-6],
    ['torqueScatter', ({ hidden }) => hidden.torqueScatter, 0.005, 0.015],
    ['barWarming', ({ hidden }) => hidden.barWarming, 0, 0.8],
  ])('draws %s from one end to the other', (_, pick, low, high) =>
    expectToFill(sortedOf(pick), low, high),
  );
  it('draws a collar with balls from 0.003 to 0.006, a greased one from 0.09 to 0.15', () => {
    const friction: Pick = ({ hidden }) => hidden.screw.collarFriction;
    const withBalls = sortedOf(friction, ({ known }) => known.collarIsBearing === true);
    const greased = sortedOf(friction, ({ known }) => known.collarIsBearing === false);
    expectToFill(withBalls, 0.003, 0.006);
    expectToFill(greased, 0.09, 0.15);
    expect(withBalls.length + greased.length).toBe(1000);
    expect(Math.abs(withBalls.length - 500)).toBeLessThan(64); // 4 standard deviations
  });
  it('draws coil set of 40 to 250 µm, as often of one sign as of the other', () => {
    const shift: Pick = ({ hidden }) => hidden.coilShift;
    const above = sortedOf(shift, ({ hidden }) => hidden.coilShift > 0);
    const below = sortedOf(shift, ({ hidden }) => hidden.coilShift < 0);
    expectToFill(above, 40e-6, 250e-6);
    expectToFill(below, -250e-6, -40e-6);
    expect(above.length + below.length).toBe(1000);
    expect(Math.abs(above.length - 500)).toBeLessThan(64); // 4 standard deviations
  });
  it('lets a clamp slip in one mill of three', () => {
    const chances = sortedOf(({ hidden }) => hidden.slipChance);
    expect([...new Set(chances)]).toEqual([0, 0.02]);
    const slipping = chances.filter((chance) => chance > 0).length;
    expect(Math.abs(slipping - 1000 / 3)).toBeLessThan(60); // 4 standard deviations
  });
  it.each([-1, 1.5, 2 ** 32])('refuses the seed %s', (seed) =>
    expect(() => benchMill(seed)).toThrow('seed must be a whole number between 0 and 4294967295'),
  );
});

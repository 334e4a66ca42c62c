/** The torques of a planned series: as a wrench is easily set to, and what the reader typed where a wrench shows it. */
import { describe, expect, it } from 'vitest';
import { fromSi, toSi } from '../../../src/units/si-value.ts';
import {
  asTyped,
  readableAbove,
  readableBelow,
  seriesTorques,
} from '../../../src/worksheet/plan/torques.ts';

const wrench = { kind: 'torque', system: 'metric' } as const;
const usWrench = { kind: 'torque', system: 'us' } as const;
const inchWrench = { kind: 'inchTorque', system: 'us' } as const;
const gauge = { kind: 'pressure', system: 'metric' } as const;
const usGauge = { kind: 'pressure', system: 'us' } as const;
const ends = { first: 2.13, isTyped: false, top: 14.5, steps: 10 };

const typed = { ...ends, first: 2.3, isTyped: true };
const BAR = 1e5;

describe('the torques of a series', () => {
  it('are round from the first to below the top, which is there as it is', () =>
    expect(seriesTorques(ends, wrench)).toEqual([2, 3.5, 5, 6.5, 7.5, 9, 10.5, 12, 13, 14.5]));

  it('keep a first one that was typed', () =>
    expect(seriesTorques(typed, wrench).slice(0, 3)).toEqual([2.3, 3.5, 5]));

  it('are round in the reader’s own unit', () => {
    const us = { ...ends, first: toSi(3, 'torque', 'us'), top: toSi(33, 'torque', 'us') };
    const shown = seriesTorques(us, usWrench).map((torque) => fromSi(torque, 'torque', 'us'));
    for (const torque of shown) expect(torque).toBeCloseTo(Math.round(torque), 9);
  });

  it('are round in inch-pounds where the wrench has them', () => {
    const inInches = (amount: number) => toSi(amount, 'inchTorque', 'us');
    const planned = { first: inInches(17.3), isTyped: false, top: inInches(118), steps: 10 };
    const shown = seriesTorques(planned, inchWrench).map(
      (torque) => Math.round(1e6 * fromSi(torque, 'inchTorque', 'us')) / 1e6,
    );
    expect(shown).toEqual([15, 30, 40, 50, 60, 75, 85, 95, 105, 118]);
    expect(fromSi(asTyped(inInches(17.3), inchWrench), 'inchTorque', 'us')).toBeCloseTo(17, 9);
    expect(fromSi(readableAbove(inInches(117.3), inchWrench), 'inchTorque', 'us')).toBeCloseTo(
      118,
      9,
    );
  });

  it.each([
    [gauge, 135 * BAR, 5],
    [usGauge, toSi(2000, 'pressure', 'us'), 100],
  ])('are pressures that a gauge shows: %j', (scale, top, step) => {
    const torques = seriesTorques({ ...ends, first: top / 10, top }, scale);
    for (const pressure of torques) {
      const steps = fromSi(pressure, 'pressure', scale.system) / step;
      expect(steps).toBeCloseTo(Math.round(steps), 6);
    }
  });

  it.each([
    [60, 6],
    [14.5, 30],
    [3, 30],
    [1.2, 12],
    [0.3, 30],
  ])('rise from each to the next up to %s N·m in %s steps', (top, steps) => {
    const torques = seriesTorques({ first: top / 10, isTyped: false, top, steps }, wrench);
    expect(torques).toHaveLength(steps);
    for (const [at, torque] of torques.slice(1).entries())
      expect(torque).toBeGreaterThan(torques[at] as number);
  });
});

describe('the next load down', () => {
  it.each([
    [13.67, 13.5],
    [61.9, 60],
    [14.5, 14.5],
    [4.13, 4],
    [0.77, 0.77],
    [0.777, 0.77],
    [0.01, 0],
  ])('from %s N·m is %s', (most, below) =>
    expect(readableBelow(most, wrench)).toBeCloseTo(below, 9),
  );

  it('is one that a gauge shows', () => {
    expect(readableBelow(84.3 * BAR, gauge) / BAR).toBeCloseTo(80, 9);
    const psi = readableBelow(toSi(1987, 'pressure', 'us'), usGauge);
    expect(fromSi(psi, 'pressure', 'us')).toBeCloseTo(1900, 6);
  });
});

describe('a typed load', () => {
  it('stays where some wrench or gauge shows it, and is the next one down elsewhere', () => {
    expect([13.7, 13.56, 0].map((load) => asTyped(load, wrench))).toEqual([13.7, 13.5, 0]);
    expect(asTyped(137 * BAR, gauge)).toBe(137 * BAR);
  });
});

describe('a load rounded up', () => {
  it.each([
    [wrench, 38.4, 39],
    [wrench, 45, 45],
    [wrench, 0.32, 0.4],
    [gauge, 131.4 * BAR, 132 * BAR],
  ])('is the next that is shown: %j', (scale, least, shown) =>
    expect(readableAbove(least, scale)).toBeCloseTo(shown, 6),
  );

  it('covers what it stands for, in the reader’s unit and with little more', () => {
    for (let torque = 0.3; torque < 150; torque *= 1.07)
      for (const scale of [wrench, usWrench]) {
        const above = readableAbove(torque, scale);
        const inUnit = fromSi(above, 'torque', scale.system) * 10;
        expect(inUnit).toBeCloseTo(Math.round(inUnit), 6);
        expect(above).toBeGreaterThanOrEqual(torque * (1 - 1e-9));
        expect(above - torque).toBeLessThan(
          Math.max(torque / 30, toSi(0.1, 'torque', 'us')) + 1e-9,
        );
      }
  });
});

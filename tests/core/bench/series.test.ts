import { describe, expect, it } from 'vitest';
import { type BenchMill, benchMill } from '../../../src/core/bench/mill.ts';
import {
  benchEfficiency,
  benchSeries,
  benchStress,
  coilSetLeft,
} from '../../../src/core/bench/series.ts';
import { dialTravel } from '../../../src/core/elasticity/dial-reading.ts';
import { mean, standardDeviation } from '../../../src/core/summary.ts';
import { zeroFromTorque } from '../../../src/core/zero.ts';

const quiet = { repeatability: 1e-12, torqueScatter: 0, barWarming: 0, slipChance: 0 };
const mill = (): BenchMill => benchMill(11);
const still = (): BenchMill => ({ ...mill(), hidden: { ...mill().hidden, ...quiet } });

/** A mill without chance, coil set and drag, read to a nanometre, but for what is asked. */
function bare(hidden: Partial<BenchMill['hidden']>, gaugeLength = 0.5): BenchMill {
  const { known, ...rest } = still();
  const none = { repeatability: 0, coilShift: 0, dragTorque: 0 };
  return {
    ...rest,
    known: { ...known, gaugeLength, dialStep: 1e-9, dialTurn: 1e-3 },
    hidden: { ...rest.hidden, ...none, ...hidden },
  };
}

/** The torque that stretches the band to a stress, from that of 1 N·m above the drag. */
function torqueFor(on: BenchMill, stress: number): number {
  const { dragTorque } = on.hidden;
  return dragTorque + stress / benchStress(on, dragTorque + 1);
}

/** Torques in equal steps up to about 120 MPa. */
function ladder(on: BenchMill, count: number): number[] {
  const perTorque = benchStress(on, on.hidden.dragTorque + 1);
  const top = on.hidden.dragTorque + 120e6 / perTorque;
  return Array.from({ length: count }, (_, i) => top * (0.1 + (0.9 * i) / (count - 1)));
}

function elongations(on: BenchMill, torques: readonly number[], attempt = 0): number[] {
  const { readings } = benchSeries(on, torques, attempt);
  return readings.map(({ dial, wholeTurns }) =>
    dialTravel({
      first: readings[0]?.dial as number,
      shown: dial,
      wholeTurns,
      travelPerTurn: on.known.dialTurn,
      runsBackwards: true,
    }),
  );
}

describe('benchStress', () => {
  it('is 0 up to the drag torque and grows in proportion above it', () => {
    const { dragTorque } = mill().hidden;
    expect(benchStress(mill(), dragTorque)).toBe(0);
    expect(benchStress(mill(), dragTorque / 2)).toBe(0);
    expect(benchStress(mill(), dragTorque + 2) / benchStress(mill(), dragTorque + 1)).toBeCloseTo(
      2,
      9,
    );
  });
});

describe('benchSeries', () => {
  it('without chance shows Hooke: stretch over gauge length is stress over E, to the dial step', () => {
    const torques = ladder(still(), 8);
    const seen = elongations(still(), torques);
    const { zero } = benchSeries(still(), torques);
    const top = benchStress(still(), torques[7] as number);
    const stretch = (top * still().known.gaugeLength) / still().hidden.youngsModulus;
    expect(Math.abs((seen[7] as number) - zero - stretch)).toBeLessThan(
      1.01 * still().known.dialStep,
    );
  });
  it('counts the turns of the hand, so that the elongation never jumps', () => {
    const fine = { ...still(), known: { ...still().known, dialStep: 2e-6, dialTurn: 0.2e-3 } };
    const seen = elongations(fine, ladder(fine, 12));
    const steps = seen.slice(1).map((value, i) => value - (seen[i] as number));
    expect(Math.max(...steps)).toBeLessThan(100e-6);
    for (const { dial } of benchSeries(fine, ladder(fine, 12)).readings) {
      expect(dial).toBeGreaterThanOrEqual(0);
      expect(dial).toBeLessThan(0.2e-3);
    }
  });
  it('turns the handle further for more torque, after the slack, to a 24th', () => {
    const turns = benchSeries(mill(), ladder(mill(), 8)).readings.map((reading) => reading.turns);
    expect(turns.every((turn, i) => i === 0 || turn >= (turns[i - 1] as number))).toBe(true);
    expect(turns[0]).toBeGreaterThan(mill().hidden.slackTurns - 1 / 24);
    for (const turn of turns) expect(24 * turn).toBeCloseTo(Math.round(24 * turn), 9);
  });
  it('begins a longer series with the shorter one, and differs from attempt to attempt', () => {
    const torques = ladder(mill(), 8);
    const all = benchSeries(mill(), torques, 3).readings;
    expect(benchSeries(mill(), torques.slice(0, 5), 3).readings).toEqual(all.slice(0, 5));
    expect(benchSeries(mill(), torques, 4).readings).not.toEqual(all);
  });
  it('holds what was reached when a lower torque is set', () => {
    const seen = elongations(still(), [10, 20, 12]);
    expect(seen[2]).toBe(seen[1]);
  });
  it.each([200e-6, -200e-6])(
    'adds a coil set of %s m, which dies by e over its stress',
    (shift) => {
      const on = bare({ coilShift: shift, coilStress: 5e6 });
      for (const times of [1, 3]) {
        const stretch = (times * 5e6 * 0.5) / on.hidden.youngsModulus;
        const { zero } = benchSeries(on, [torqueFor(on, times * 5e6)]);
        expect(-zero - stretch).toBeCloseTo(shift / Math.E ** times, 8);
      }
    },
  );
  it.each([0.4, 0.7])(
    'reads lower as 2 K of warming lengthen a bar of %s m, all but 1/e of it in 5 readings',
    (gaugeLength) => {
      const on = bare({ barWarming: 2 }, gaugeLength);
      const whole = 11.5e-6 * 2 * gaugeLength; // steel, by hand
      const seen = elongations(on, new Array(100).fill(20));
      expect(seen[5]).toBeCloseTo(-whole * (1 - 1 / Math.E), 8);
      expect(seen[99]).toBeCloseTo(-whole, 8);
      expect(benchSeries(on, new Array(5).fill(20)).released).toBeCloseTo(seen[5] as number, 12);
    },
  );
  it('lets a clamp slip by 20 to 80 µm, evenly, before each reading but the first', () => {
    const seen = elongations(bare({ slipChance: 1 }), new Array(1001).fill(20));
    const slips = seen.slice(1).map((value, i) => (seen[i] as number) - value);
    const [least, most] = [Math.min(...slips), Math.max(...slips)];
    expect(least).toBeGreaterThan(20e-6 - 2e-9);
    expect(least).toBeLessThan(21e-6);
    expect(most).toBeGreaterThan(79e-6);
    expect(most).toBeLessThan(80e-6 + 2e-9);
    expect(Math.abs(mean(slips) - 50e-6)).toBeLessThan(3e-6); // 5 standard errors
  });
  it('slips as often as the mill says', () => {
    const seen = elongations(bare({ slipChance: 0.3 }), new Array(1001).fill(20));
    const slips = seen.slice(1).filter((value, i) => value !== seen[i]).length;
    expect(Math.abs(slips / 1000 - 0.3)).toBeLessThan(0.06); // 4 standard errors
  });
  it('scatters its readings about the true extension by the repeatability', () => {
    const on = bare({ repeatability: 5e-6 });
    const torques = new Array(4000).fill(20);
    const { zero } = benchSeries(on, torques);
    const extensions = elongations(on, torques).map((value) => value - zero);
    const stretch = (benchStress(on, 20) * 0.5) / on.hidden.youngsModulus;
    expect(Math.abs(mean(extensions) - stretch)).toBeLessThan(0.3e-6); // 4 standard errors
    expect(standardDeviation(extensions) / 5e-6).toBeCloseTo(1, 1);
  });
  it('scatters the torque about what the wrench was set to', () => {
    const on = bare({ torqueScatter: 0.2 });
    const stretch = (benchStress(on, 20) * 0.5) / on.hidden.youngsModulus;
    const ratios = Array.from(
      { length: 3000 },
      (_, attempt) => -benchSeries(on, [20], attempt).zero / stretch,
    );
    expect(Math.abs(mean(ratios) - 1)).toBeLessThan(0.015); // 4 standard errors
    expect(Math.abs(standardDeviation(ratios) - 0.2)).toBeLessThan(0.012); // 4.6 standard errors
  });
  it('has not turned the hand at the first reading: 0, not minus 0', () =>
    expect(benchSeries(mill(), [20]).readings[0]?.wholeTurns).toBe(0));
  it('does not come back to its first reading once a clamp has slipped', () => {
    const loose = { ...still(), hidden: { ...still().hidden, slipChance: 1 } };
    const torques = ladder(loose, 6);
    const { slipped, released } = benchSeries(loose, torques);
    expect(slipped).toBe(true);
    expect(released).toBeLessThan(-6 * 20e-6 + 2 * loose.known.dialStep);
    expect(benchSeries(still(), torques).slipped).toBe(false);
    expect(Math.abs(benchSeries(still(), torques).released)).toBeLessThanOrEqual(
      loose.known.dialStep,
    );
  });
  it('lets the envelope find its zero: the 95 % interval holds it in at least 90 % of mills', () => {
    const found = Array.from({ length: 150 }, (_, seed) => benchMill(seed))
      .filter((drawn) => drawn.hidden.slipChance === 0)
      .map((drawn) => {
        const torques = ladder(drawn, 10);
        const { zero } = benchSeries(drawn, torques);
        const { dragTorque } = drawn.hidden;
        const readings = elongations(drawn, torques);
        const torqueScatter = torques.map((torque) => 0.01 * torque);
        const { low, high } = zeroFromTorque({ torques, readings, dragTorque, torqueScatter });
        return low <= zero && zero <= high;
      });
    expect(found.length).toBeGreaterThan(80);
    expect(found.filter(Boolean).length / found.length).toBeGreaterThan(0.9);
  });
  it('refuses no torques, torques not above 0 and attempts out of range', () => {
    expect(() => benchSeries(mill(), [])).toThrow('torques must be at least one (was none)');
    expect(() => benchSeries(mill(), [10, 0])).toThrow('torques[1] must be above 0 N·m (was 0)');
    const refusal = 'attempt must be a whole number between 0 and 999999';
    for (const attempt of [-1, 0.5, 1_000_000])
      expect(() => benchSeries(mill(), [10], attempt)).toThrow(`${refusal} (was ${attempt})`);
  });
  it('has other chances at its last attempt than at any mill nearby', () => {
    const first = (seed: number, attempt: number) =>
      JSON.stringify(benchSeries({ ...bare({ torqueScatter: 0.2 }), seed }, [20], attempt));
    const seen = [0, 1, 2].flatMap((seed) => [0, 1, 999_999].map((n) => first(seed, n)));
    expect(new Set(seen).size).toBe(9);
  });
});

describe('coilSetLeft', () => {
  it('is whole on the slack band and dies by e over its stress, in its own sign', () => {
    const on = bare({ coilShift: -120e-6, coilStress: 6e6 });
    expect(coilSetLeft(on, 0)).toBe(-120e-6);
    expect(coilSetLeft(on, 12e6)).toBeCloseTo(-120e-6 / Math.E ** 2, 12);
  });
});

describe('benchEfficiency', () => {
  it('is what a turn of the wrench puts into the wheel, over what it takes', () => {
    const { hidden, known } = mill();
    const area = known.bodyWidth * known.thickness;
    const torque = hidden.dragTorque + 10;
    const force = 2 * benchStress(mill(), torque) * area;
    expect(benchEfficiency(mill())).toBeCloseTo(
      (force * hidden.screw.lead) / (2 * Math.PI * 10),
      9,
    );
  });
});

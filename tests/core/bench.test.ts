import { describe, expect, it } from 'vitest';
import { benchSeries, benchStress } from '../../src/core/bench.ts';
import { type BenchMill, benchMill } from '../../src/core/bench-mill.ts';
import { dialTravel } from '../../src/core/reading.ts';
import { zeroFromTorque } from '../../src/core/zero.ts';

const quiet = { repeatability: 1e-12, torqueScatter: 0, barWarming: 0, slipChance: 0 };
const mill = (): BenchMill => benchMill(11);
const still = (): BenchMill => ({ ...mill(), hidden: { ...mill().hidden, ...quiet } });

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
  it('reads lower and lower as the hands warm the bar', () => {
    const warm = { ...still(), hidden: { ...still().hidden, barWarming: 5 } };
    const [, , last] = elongations(warm, [20, 20, 20]);
    expect(last).toBeLessThan(-5e-6);
  });
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
    expect(() => benchSeries(mill(), [10], -1)).toThrow(/attempt must be a whole number/);
  });
});

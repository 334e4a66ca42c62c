import { describe, expect, it } from 'vitest';
import { benchMillAt, type LevelMill } from '../../../src/core/bench/levels.ts';
import { benchLooks, stepsPerTurn, type TakenSeries } from '../../../src/core/bench/looks.ts';
import { benchStress } from '../../../src/core/bench/series.ts';

const TAKEN: TakenSeries = {
  clamps: 'careful',
  hands: 'gloved',
  attempt: 0,
  torques: [6, 9, 12, 15, 18],
};
const QUIET = {
  repeatability: 1e-12,
  torqueScatter: 0,
  barWarming: 0,
  slipChance: 0,
  coilShift: 0,
};

/** A mill without chance or coil set, whose dial runs one way. */
function quiet(runsBackwards: boolean, seed = 11): LevelMill {
  const { hidden, told, ...rest } = benchMillAt(seed, 'clean');
  return { ...rest, hidden: { ...hidden, ...QUIET }, told: { ...told, runsBackwards } };
}

const positions = (mill: LevelMill, part: Partial<TakenSeries> = {}) =>
  benchLooks(mill, { ...TAKEN, ...part }).looks.map(({ position }) => position);

describe('benchLooks', () => {
  it.each([
    [true, -1],
    [false, 1],
  ])('moves the hand by the stretch, backwards %s', (runsBackwards, way) => {
    const mill = quiet(runsBackwards);
    const [slack, ...seen] = positions(mill);
    seen.forEach((position, at) => {
      const { gaugeLength, dialStep } = mill.known;
      const stress = benchStress(mill, TAKEN.torques[at] as number);
      const stretch = (stress * gaugeLength) / mill.hidden.youngsModulus;
      expect(Math.abs((position - (slack as number)) * way - stretch / dialStep)).toBeLessThan(
        1.01,
      );
    });
  });
  it('begins with the small hand past 6 where the hand runs backwards, past 2 where forwards', () => {
    for (const seed of [1, 2, 3, 4, 5]) {
      const turns = (mill: LevelMill) =>
        Math.floor((positions(mill)[0] as number) / stepsPerTurn(mill));
      expect(turns(quiet(true, seed))).toBe(6);
      expect(turns(quiet(false, seed))).toBe(2);
    }
  });
  it('keeps the small hand within its dial at every level, whatever is done', () => {
    for (let seed = 0; seed < 300; seed += 1) {
      const mill = benchMillAt(seed, 'nasty');
      const torques = [0.3, 0.6, 1, 1, 1].map((share) => share * mill.told.mostTorque);
      const taken = { ...TAKEN, clamps: 'quick', hands: 'bare', attempt: seed, torques } as const;
      const { looks, released } = benchLooks(mill, taken);
      const all = [...looks, released].map(({ position }) => position);
      expect(Math.min(...all)).toBeGreaterThanOrEqual(0);
      expect(Math.max(...all)).toBeLessThan(10 * stepsPerTurn(mill));
    }
  });
  it.each([true, false])(
    'set to zero, shows whole turns at that look and moves as before, backwards %s',
    (runsBackwards) => {
      const mill = quiet(runsBackwards);
      const [plain, zeroed] = [positions(mill), positions(mill, { zeroedAt: 2 })];
      expect((zeroed[2] as number) % stepsPerTurn(mill)).toBe(0);
      const moves = (all: readonly number[]) =>
        all.map((position) => position - (all[0] as number));
      expect(moves(zeroed)).toEqual(moves(plain));
    },
  );
  it('begins a longer series with the shorter one', () => {
    const mill = benchMillAt(5, 'nasty');
    const all = benchLooks(mill, TAKEN).looks;
    const short = benchLooks(mill, { ...TAKEN, torques: TAKEN.torques.slice(0, 3) }).looks;
    expect(short).toEqual(all.slice(0, 4));
    expect(benchLooks(mill, { ...TAKEN, attempt: 1 }).looks).not.toEqual(all);
  });
  it('comes back after letting off, unless a clamp has slipped', () => {
    const still = benchLooks(quiet(true), TAKEN);
    expect(
      Math.abs(still.released.position - (still.looks[0]?.position as number)),
    ).toBeLessThanOrEqual(1);
    expect(still.slipped).toBe(false);
    const { hidden, ...rest } = quiet(true);
    const loose = { ...rest, hidden: { ...hidden, slipChance: 1 } };
    const slipping = benchLooks(loose, { ...TAKEN, clamps: 'quick' });
    expect(slipping.slipped).toBe(true);
    const back = slipping.released.position - (slipping.looks[0]?.position as number);
    expect(back * loose.known.dialStep).toBeGreaterThan(6 * 20e-6 - 2 * loose.known.dialStep);
  });
  it('has not turned the handle while the torque is only the no-load one', () => {
    const mill = quiet(true);
    const low = mill.hidden.dragTorque * 0.9;
    const turns = (torques: number[]) =>
      benchLooks(mill, { ...TAKEN, torques }).looks.map((look) => look.turns);
    expect(turns([low])).toEqual([0, 0]);
    const [, , tight, back] = turns([low, 15, low]);
    expect(tight).toBeGreaterThan(0);
    expect(back).toBe(tight);
  });
  it('says at which torque each look was, none at the slack band', () =>
    expect(benchLooks(quiet(true), TAKEN).looks.map(({ torque }) => torque)).toEqual([
      0,
      ...TAKEN.torques,
    ]));
  it('has its zero where the slack, uncoiled band would be: at the first look without coil set', () =>
    expect(Math.abs(benchLooks(quiet(true), TAKEN).zero)).toBeLessThan(1e-6));
  it('refuses a look that is none, and torques not above 0', () => {
    expect(() => positions(quiet(true), { zeroedAt: 6 })).toThrow(
      'zeroedAt must be a whole number between 0 and 5 (was 6)',
    );
    expect(() => positions(quiet(true), { torques: [0] })).toThrow(
      'torques[1] must be above 0 N·m (was 0)',
    );
  });
});

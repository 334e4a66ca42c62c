/**
 * Simulated loading series against turns of the handle: slack first, then stretch in proportion.
 * Units: m for readings; turns in turns.
 * Source: assumptions of the study.
 */
import type { RandomSource } from '../../src/core/random.ts';

const STRETCH = 400e-6; // m, from tight to the top
const PER_TURN = 800e-6; // m of stretch in a turn
const LEFT = 0.05; // share of the top load over which coil set dies once the band is tight

/** One cell of the study. */
export interface TurnsCase {
  readonly start: string;
  readonly straightening: string;
  readonly noise: number; // m
  readonly turns: readonly number[];
  readonly clean: readonly number[]; // m, readings without noise; the true zero is 0
  readonly showsNothing: boolean; // slack is taken up at the very slope of the stretch: no knee
}

/** How far the slack reaches into the series, and how many readings are spent on it. */
const starts = [
  { start: 'slack', slack: 0.25, inSlack: 0.35 },
  { start: 'snug', slack: 0.05, inSlack: 0.1 },
  { start: 'finely stepped', slack: 0.1, inSlack: 0.5 },
] as const;

const straightenings = [
  { straightening: 'none', amplitudes: [0] },
  { straightening: 'while slack', amplitudes: [-120e-6, 60e-6, 200e-6] },
  { straightening: 'once tight', amplitudes: [-120e-6, 60e-6, 200e-6] },
  { straightening: 'no knee', amplitudes: [Number.NaN] }, // the amplitude follows from the slack
] as const;

function turnsOf(count: number, slack: number, inSlack: number): number[] {
  const before = Math.max(1, Math.round(count * inSlack));
  const after = count - before;
  const tight = Array.from({ length: after }, (_, i) => slack + (0.5 * (i + 1)) / after);
  return [...Array.from({ length: before }, (_, i) => (slack * i) / before), ...tight];
}

function cleanReading(turn: number, slack: number, straightening: string, amplitude: number) {
  const stretch = PER_TURN * Math.max(0, turn - slack);
  if (straightening === 'no knee') return PER_TURN * (turn - slack);
  const taken = Math.min(1, turn / slack);
  const left = straightening === 'while slack' ? 1 - taken : Math.exp(-stretch / STRETCH / LEFT);
  return stretch + amplitude * left;
}

/** All cells for the readings per series and noises given. */
export function turnsCases(
  counts: readonly number[],
  noises: readonly number[],
): readonly TurnsCase[] {
  return counts.flatMap((count) =>
    noises.flatMap((noise) =>
      starts.flatMap(({ start, slack, inSlack }) =>
        straightenings.flatMap(({ straightening, amplitudes }) =>
          amplitudes.map((amplitude) => {
            const turns = turnsOf(count, slack, inSlack);
            const clean = turns.map((t) => cleanReading(t, slack, straightening, amplitude));
            return {
              start,
              straightening,
              noise,
              turns,
              clean,
              showsNothing: straightening === 'no knee',
            };
          }),
        ),
      ),
    ),
  );
}

/** One series of a cell. */
export function turnsReadings({ clean, noise }: TurnsCase, random: RandomSource): number[] {
  return clean.map((reading) => reading + noise * random.normal());
}

/**
 * Simulated loading series against turns of the handle: slack first, then stretch in proportion.
 * Units: m for readings; turns in turns.
 * Source: assumptions of the study.
 */
import type { RandomSource } from '../../src/core/random.ts';

const STRETCH = 400e-6; // m, from tight to the top
const TURNS = 0.5; // from tight to the top
const PER_TURN = STRETCH / TURNS;
const LEFT = 0.05; // share of the top load over which coil set dies once the band is tight
const AMPLITUDES = [-120e-6, 60e-6, 200e-6]; // m, coil set at the start

/** One cell of the study. */
export interface TurnsCase {
  readonly start: string;
  readonly straightening: string;
  readonly noise: number; // m
  readonly turns: readonly number[];
  readonly clean: readonly number[]; // m, readings without noise; the true zero is 0
  readonly hidesKnee: boolean; // straightening moves the dial like stretching, within a factor of 2
}

/** How many turns of slack, and which share of the readings is spent on it. */
const starts = [
  { start: 'slack', slack: 0.25, inSlack: 0.35 },
  { start: 'snug', slack: 0.05, inSlack: 0.1 },
  { start: 'finelyStepped', slack: 0.1, inSlack: 0.5 },
] as const;

function turnsOf(count: number, slack: number, inSlack: number): number[] {
  const before = Math.max(1, Math.round(count * inSlack));
  const after = count - before;
  const slackTurns = Array.from({ length: before }, (_, i) => (slack * i) / before);
  const tightTurns = Array.from({ length: after }, (_, i) => slack + (TURNS * (i + 1)) / after);
  return [...slackTurns, ...tightTurns];
}

function hidesKnee(slack: number, amplitude: number): boolean {
  const ratio = -amplitude / slack / PER_TURN;
  return ratio > 0.5 && ratio < 2;
}

type Cell = Omit<TurnsCase, 'noise' | 'start'>;

/** Coil set that goes while the band is slack, or only once it is tight. */
function cellsOf(count: number, slack: number, inSlack: number): readonly Cell[] {
  const turns = turnsOf(count, slack, inSlack);
  const stretch = (turn: number): number => PER_TURN * Math.max(0, turn - slack);
  const whileSlack = [...AMPLITUDES, -PER_TURN * slack].map((amplitude) => ({
    straightening: 'whileSlack',
    turns,
    clean: turns.map((turn) => stretch(turn) + amplitude * Math.max(0, 1 - turn / slack)),
    hidesKnee: hidesKnee(slack, amplitude),
  }));
  const onceTight = [0, ...AMPLITUDES].map((amplitude) => ({
    straightening: 'onceTight',
    turns,
    clean: turns.map(
      (turn) => stretch(turn) + amplitude * Math.exp(-stretch(turn) / STRETCH / LEFT),
    ),
    hidesKnee: false,
  }));
  return [...whileSlack, ...onceTight];
}

/** All cells for the readings per series and noises given. */
export function turnsCases(
  counts: readonly number[],
  noises: readonly number[],
): readonly TurnsCase[] {
  return counts.flatMap((count) =>
    noises.flatMap((noise) =>
      starts.flatMap(({ start, slack, inSlack }) =>
        cellsOf(count, slack, inSlack).map((cell) => ({ ...cell, start, noise })),
      ),
    ),
  );
}

/** One series of a cell. */
export function turnsReadings({ clean, noise }: TurnsCase, random: RandomSource): number[] {
  return clean.map((reading) => reading + noise * random.normal());
}

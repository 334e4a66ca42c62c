/**
 * What the bench shows for fixed mills and fixed actions, in steps of the dial: the same on every machine, or a class
 * does not have one mill. Imported by tests, and run as it is under other versions of Node and in a browser.
 * Units: positions in steps of the dial; notes in tenths of a hertz.
 */
import {
  type BenchLevel,
  benchLevels,
  benchLooks,
  benchMillAt,
  benchStress,
  pluckedNote,
  turnsSlack,
} from '../../src/core/bench.ts';

const SEEDS = [0, 1, 7, 1234, 9999, 4294967295];

function lineOf(seed: number, level: BenchLevel): string {
  const mill = benchMillAt(seed, level);
  const { usualTorque } = mill.told;
  const torques = Array.from({ length: 8 }, (_, at) => (usualTorque * (at + 1)) / 8);
  const taken = { clamps: 'quick', hands: 'bare', torques } as const;
  const positions = [0, 1].flatMap((attempt) => {
    const { looks, released } = benchLooks(mill, { ...taken, attempt });
    return [...looks, released].map(({ position }) => position);
  });
  const note = pluckedNote(mill, benchStress(mill, usualTorque), 0) ?? 0;
  const tries = [0.9, 1, 1.1].map((share, at) =>
    turnsSlack(mill, share * mill.hidden.dragTorque, at),
  );
  return [seed, level, ...positions, Math.round(10 * note), ...tries.map(Number)].join(' ');
}

/** One line for each mill and level. */
export const goldenLooks = (): readonly string[] =>
  SEEDS.flatMap((seed) => benchLevels.map((level) => lineOf(seed, level)));

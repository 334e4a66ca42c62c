/**
 * A learner who makes no mistake: careful clamps, gloves, ten even steps from a tenth of the load, every dial read right.
 * Units: N·m, m.
 */
import type { LevelMill } from '../../../src/core/bench/levels.ts';
import { benchLooks, type TakenSeries } from '../../../src/core/bench/looks.ts';
import type { NotedRow } from '../../../src/core/bench/noted.ts';

const STEPS = 10;

/** Torques that can be set on a wrench, from a tenth of the load to what the owner tightens to. */
export function wholeLadder({ hidden, told }: LevelMill): readonly number[] {
  const { dragTorque } = hidden;
  return Array.from({ length: STEPS }, (_, at) => {
    const share = 0.1 + (0.9 * at) / (STEPS - 1);
    return Math.round(10 * (dragTorque + (told.usualTorque - dragTorque) * share)) / 10;
  });
}

/** What such a learner took and wrote down, or another with other handling. */
export function perfectRows(
  mill: LevelMill,
  part: Partial<TakenSeries> = {},
): { readonly taken: readonly TakenSeries[]; readonly rows: readonly NotedRow[] } {
  const torques = wholeLadder(mill);
  const series: TakenSeries = { clamps: 'careful', hands: 'gloved', attempt: 0, torques, ...part };
  const { looks } = benchLooks(mill, series);
  const rows = looks.slice(1).map(({ torque, position }, at) => ({
    series: 0,
    place: at + 1,
    torque,
    dial: position * mill.known.dialStep,
  }));
  return { taken: [series], rows };
}

/**
 * Simulated loading series against torque: straight line, toe, noise of the dial.
 * Units: m; loads as shares of the top load, so the drag torque is 0 and the top torque 1.
 * Source: assumptions of the study.
 */
import type { RandomSource } from '../../src/core/random.ts';
import { toeShapes } from './toe-shapes.ts';

const STRETCH = 400e-6; // from no tension to the top load

/** One cell of the study. */
export interface TorqueCase {
  readonly count: number; // readings
  readonly noise: number; // m, standard deviation of a reading
  readonly shape: string;
  readonly toe: readonly number[]; // m, at each reading
  readonly loads: readonly number[];
}

/** What is crossed with the shapes of the toe. */
export interface TorqueGrid {
  readonly counts: readonly number[]; // readings per series
  readonly noises: readonly number[]; // m
  readonly amplitudes: readonly number[]; // m, of the toe at no load
  readonly deadAt: readonly number[]; // share of the top load at which 5 % of the toe is left
  readonly firstLoad: number; // share of the top load at the first reading
}

/** The grid of the published table. */
export const fullGrid: TorqueGrid = {
  counts: [6, 8, 10, 12, 15],
  noises: [2.5e-6, 5e-6, 12e-6],
  amplitudes: [-120e-6, 60e-6, 200e-6],
  deadAt: [0.1, 0.25],
  firstLoad: 0.02,
};

/** The toes of a grid: none, and every shape with every amplitude and length. */
function toesOf({ amplitudes, deadAt }: TorqueGrid, loads: readonly number[]) {
  const bent = toeShapes(deadAt).flatMap(({ name, left }) =>
    amplitudes.map((a) => ({ shape: name, toe: loads.map((load) => a * left(load)) })),
  );
  return [{ shape: 'none', toe: loads.map(() => 0) }, ...bent];
}

/** The cells of a grid. */
export function torqueCases(grid: TorqueGrid): readonly TorqueCase[] {
  return grid.counts.flatMap((count) => {
    const step = (1 - grid.firstLoad) / (count - 1);
    const loads = Array.from({ length: count }, (_, i) => grid.firstLoad + step * i);
    const toes = toesOf(grid, loads);
    return grid.noises.flatMap((noise) => toes.map((toe) => ({ count, noise, loads, ...toe })));
  });
}

/** One series of a cell; the true zero is 0. */
export function torqueReadings({ loads, toe, noise }: TorqueCase, random: RandomSource): number[] {
  return loads.map((load, i) => STRETCH * load + (toe[i] as number) + noise * random.normal());
}

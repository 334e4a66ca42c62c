/**
 * Simulated loading series against torque: straight line, toe, noise of the dial.
 * Units: m; loads as shares of the top load, so the drag torque is 0 and the top torque 1.
 * Source: assumptions of the study.
 */
import type { RandomSource } from '../../src/core/random.ts';
import { toeShapes } from './toe-shapes.ts';

const STRETCH = 400e-6; // from no tension to the top load
const FIRST_LOAD = 0.02;

/** One cell of the study. */
export interface TorqueCase {
  readonly count: number; // readings
  readonly noise: number; // m, standard deviation of a reading
  readonly shape: string;
  readonly toe: readonly number[]; // m, at each reading
  readonly loads: readonly number[];
}

/** Readings per series, noises and amplitudes that are crossed with the shapes. */
export interface TorqueGrid {
  readonly counts: readonly number[];
  readonly noises: readonly number[]; // m
  readonly amplitudes: readonly number[]; // m
}

/** The grid of the published table. */
export const fullGrid: TorqueGrid = {
  counts: [6, 8, 10, 12, 15],
  noises: [2.5e-6, 5e-6, 12e-6],
  amplitudes: [-120e-6, 60e-6, 200e-6],
};

/** The cells of a grid: no toe, and every shape with every amplitude. */
export function torqueCases({ counts, noises, amplitudes }: TorqueGrid): readonly TorqueCase[] {
  return counts.flatMap((count) => {
    const step = (1 - FIRST_LOAD) / (count - 1);
    const loads = Array.from({ length: count }, (_, i) => FIRST_LOAD + step * i);
    const toes = [
      { shape: 'none', toe: loads.map(() => 0) },
      ...toeShapes.flatMap(({ name, left }) =>
        amplitudes.map((a) => ({ shape: name, toe: loads.map((load) => a * left(load)) })),
      ),
    ];
    return noises.flatMap((noise) =>
      toes.map(({ shape, toe }) => ({ count, noise, shape, toe, loads })),
    );
  });
}

/** One series of a cell; the true zero is 0. */
export function torqueReadings({ loads, toe, noise }: TorqueCase, random: RandomSource): number[] {
  return loads.map((load, i) => STRETCH * load + (toe[i] as number) + noise * random.normal());
}

/**
 * Simulated measurements in several series of one band: one stretch, a zero for each series, and a toe that comes
 * back each time or is another each time. The shapes are others than those of the study of coverage.
 * Units: m; loads as shares of the top load, so the drag torque is 0 and the top torque 1.
 * Source: assumptions of the study.
 */
import type { RandomSource } from '../../src/core/random.ts';

/** Share of the toe left, where u = 1 means about 5 % left. */
const shapes: readonly ((u: number) => number)[] = [
  (u) => 0.05 ** (u * Math.sqrt(u)),
  (u) => 1 / (1 + 19 * u * u),
  (u) => (1 + (Math.cbrt(20) - 1) * u) ** -3,
  (u) => 0.5 * 0.05 ** (1.6 * u) + 0.5 * 0.05 ** (0.8 * u),
  (u) => (u < 1 ? 0.05 + 0.475 * (1 + Math.cos(Math.PI * u)) : 0.05 ** u),
  (u) => 1 / (1 + 19 * u ** 3),
];

/** One cell: what is the same in all its measurements. */
export interface JoinedCase {
  readonly shape: (u: number) => number;
  readonly height: number; // m, of the toe at no load, give or take 30 %
  readonly noise: number; // m, standard deviation of a reading
  readonly count: number; // readings in a series
}

/** The 72 cells. */
export const joinedCases: readonly JoinedCase[] = shapes.flatMap((shape) =>
  [-90e-6, 150e-6].flatMap((height) =>
    [3e-6, 8e-6].flatMap((noise) => [7, 9, 12].map((count) => ({ shape, height, noise, count }))),
  ),
);

/** How a measurement is made. */
export interface JoinedWay {
  readonly series: number;
  readonly alike: boolean; // the same toe in each series
  readonly first: number; // share of the load at the first reading
  readonly stretch: readonly [low: number, high: number]; // m, at the top load
}

/** One measurement of a cell, with the stretch that it should show. */
export function joinedReadings(cell: JoinedCase, way: JoinedWay, random: RandomSource) {
  const between = (low: number, high: number) => low + (high - low) * random.uniform();
  const drawnToe = () => {
    const [height, length] = [cell.height * between(0.7, 1.3), between(0.06, 0.2)];
    return (load: number) => height * cell.shape(load / length);
  };
  const stretch = between(...way.stretch);
  const common = drawnToe();
  const rows = Array.from({ length: way.series }, (_, series) => {
    const [toe, zero] = [way.alike ? common : drawnToe(), between(0, 100e-6)];
    return Array.from({ length: cell.count }, (_, i) => {
      const load = way.first + ((1 - way.first) * i) / (cell.count - 1);
      return {
        series,
        load,
        shown: zero + stretch * load + toe(load) + cell.noise * random.normal(),
      };
    });
  }).flat();
  return {
    stretch,
    taken: {
      torques: rows.map(({ load }) => load),
      readings: rows.map(({ shown }) => shown),
      series: rows.map(({ series }) => series),
      dragTorque: 0,
    },
  };
}

/** An estimate of the stretch with its interval, as a share of the truth. */
export interface Found {
  readonly off: number;
  readonly halfWidth: number;
  readonly held: boolean;
}

/** An estimate beside the truth, in the unit of both. */
export const found = (truth: number, value: number, low: number, high: number): Found => ({
  off: value - truth,
  halfWidth: (high - low) / 2,
  held: low <= truth && truth <= high,
});

/** Root mean square error, mean half-width and coverage. */
export function counted(all: readonly Found[]) {
  const mean = (pick: (one: Found) => number) =>
    all.reduce((sum, one) => sum + pick(one), 0) / all.length;
  return {
    error: Math.sqrt(mean(({ off }) => off ** 2)),
    halfWidth: mean(({ halfWidth }) => halfWidth),
    coverage: mean(({ held }) => Number(held)),
  };
}

/**
 * The mill at Ottersleigh on the practice bench: what its owner measured, and in each series another coil set, another
 * repeatability, another wrench.
 * Units: SI.
 * Source: the mill is invented; what hides in a series is drawn by core/bench.
 */
import { type BenchMill, benchMill } from '../../core/bench.ts';
import { OTTERSLEIGH, screwWith } from '../../models/mills/ottersleigh.ts';

/** The mill with what hides in the series of a seed; no clamp slips. */
export function millOfSeed(seed: number): BenchMill {
  const { known, hidden } = benchMill(seed);
  const { place: _, threadFriction, ...sizes } = OTTERSLEIGH;
  return {
    seed,
    known: { ...known, ...sizes, dialStep: sizes.graduation / 2, dialTurn: 1e-3 },
    hidden: { ...hidden, ...sizes, screw: screwWith(threadFriction.middle), slipChance: 0 },
  };
}

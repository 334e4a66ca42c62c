/**
 * Numbers that look drawn by chance and are the same again from the same seed.
 * Units: none.
 * Source: generator sfc32 of C. Doty-Humphrey (PractRand); normal by the polar method of Marsaglia
 * and Bray, SIAM Review 6 (1964) 260; Student by that of Bailey, Math. Comp. 62 (1994) 779; all from
 * memory. Checked by their moments and shares.
 */
import { assertWhole } from './assert.ts';

const TWO_TO_32 = 2 ** 32;
const ROUNDS_TO_MIX_SEED = 15;

/** A source of random numbers; each call moves it on. */
export interface RandomSource {
  /** Between 0 and 1, neither included, equal chances. */
  readonly uniform: () => number;
  /** Normal with mean 0 and standard deviation 1. */
  readonly normal: () => number;
  /** Student's distribution with scale 1, for degrees of freedom > 0. */
  readonly student: (degreesOfFreedom: number) => number;
}

/** Whole numbers from 0 to 2³² − 1. The state is a typed list, so that it never leaves 32 bits. */
function wholeNumbers(seed: number): () => number {
  const state = Uint32Array.of(seed % TWO_TO_32, Math.floor(seed / TWO_TO_32), 0, 1);
  const next = (): number => {
    const b = state[1] as number;
    const c = state[2] as number;
    const counter = state[3] as number;
    const drawn = ((state[0] as number) + b + counter) | 0;
    state[0] = b ^ (b >>> 9);
    state[1] = c + (c << 3);
    state[2] = ((c << 21) | (c >>> 11)) + drawn;
    state[3] = counter + 1;
    return drawn >>> 0;
  };
  for (let round = 0; round < ROUNDS_TO_MIX_SEED; round += 1) next();
  return next;
}

/** A source of random numbers from a seed. @throws RangeError unless seed is whole, 0 to 2⁵³ − 1 */
export function randomSource(seed: number): RandomSource {
  assertWhole('seed', seed, 0, Number.MAX_SAFE_INTEGER);
  const next = wholeNumbers(seed);
  const uniform = (): number => (next() + 0.5) / TWO_TO_32;
  let across = 0;
  /** Squared distance from the middle of a point in the unit circle; `across` is one coordinate. */
  const pointInCircle = (): number => {
    for (;;) {
      across = 2 * uniform() - 1;
      const along = 2 * uniform() - 1;
      const squared = across * across + along * along;
      if (squared <= 1) return squared;
    }
  };
  const normal = (): number => {
    const squared = pointInCircle();
    return across * Math.sqrt((-2 * Math.log(squared)) / squared);
  };
  const student = (degreesOfFreedom: number): number => {
    const squared = pointInCircle();
    const power = Math.expm1((-2 * Math.log(squared)) / degreesOfFreedom);
    return across * Math.sqrt((degreesOfFreedom * power) / squared);
  };
  return { uniform, normal, student };
}

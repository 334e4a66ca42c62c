/**
 * The mill that the reader has chosen, and the steel of all bands.
 * Units: SI.
 * Source: definition.
 */
import { bandSteel } from '../../core/assumptions.ts';
import type { CountingMill } from './mill.ts';
import { MILLS } from './mills.worked.ts';

/** The steel of all bands. */
export const STEEL = { youngsModulus: bandSteel.youngsModulus } as const;

/** The mill at a place of the choice. */
export function millAt(place: number): CountingMill {
  return MILLS[place] ?? MILLS[0];
}

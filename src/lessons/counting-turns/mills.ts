/**
 * The mill that the reader has chosen, and the steel of all bands.
 * Units: SI.
 * Source: definition.
 */
import type { CountingMill } from './mill.ts';
import { MILLS } from './mills.worked.ts';

/** The steel of all bands. */
export const STEEL = { youngsModulus: 205e9 } as const;

/** The mill at a place of the choice. */
export function millAt(place: number): CountingMill {
  return MILLS[place] ?? MILLS[0];
}

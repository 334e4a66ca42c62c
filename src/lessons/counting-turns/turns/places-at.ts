/**
 * The mill that the reader chose, as it is now, in the counting-turns figure.
 * Units: drawing units.
 */
import { MILLS } from '../mills.worked.ts';
import type { State } from '../state.ts';
import type { CountingLayout } from './layout.ts';
import { type CountingPlaces, millPlaces } from './mill-places.ts';

/** How many times larger than the mill its gives are drawn. */
const TIMES = { stiffFrame: 60, discWashers: 60, softSpring: 120, oil: 80 } as const;

/** Where everything on it is. */
export function countingPlaces({ values }: State, layout: CountingLayout): CountingPlaces {
  const mill = MILLS[values.tensioner];
  const scale = layout.span / (mill.centreDistance + mill.wheelDiameter);
  return millPlaces(mill, { ...layout.mill, scale }, TIMES[values.tensioner], values);
}

/**
 * The parts of a link to a page for teachers, `#units=us&learners=24`: what is no name of a system is as if it were not there.
 * Units: none.
 */
import type { UnitSystem } from '../../units/kinds.ts';

/** The units that a fragment names, if it names any that there are. Never throws. */
export function unitsIn(fragment: string): UnitSystem | undefined {
  const units = new URLSearchParams(fragment.replace(/^#/, '')).get('units');
  return units === 'metric' || units === 'us' ? units : undefined;
}

/** A fragment, without `#`, with one part set and what else it held; the name of a place on the page gives way. */
export function withPart(fragment: string, name: string, value: string): string {
  const bare = fragment.replace(/^#/, '');
  const parts = bare.includes('=') ? bare.split('&') : [];
  return [...parts.filter((part) => !part.startsWith(`${name}=`)), `${name}=${value}`].join('&');
}

/** The same, with the units. */
export const withUnits = (fragment: string, units: UnitSystem): string =>
  withPart(fragment, 'units', units);

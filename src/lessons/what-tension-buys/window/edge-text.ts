/**
 * Edges as text, the same everywhere: to a megapascal or a hundred psi, for no wish is known better.
 * Units: Pa in.
 */
import { formatParts, formatQuantity } from '../../../units/format-quantity.ts';
import type { UnitSystem } from '../../../units/kinds.ts';
import { fromSi } from '../../../units/si-value.ts';

const ROUNDED = { metric: 0, us: 2 } as const; // digits before the point that are left out

const digitsOf = (stress: number, system: UnitSystem): number => {
  const shown = Math.max(1, Math.abs(fromSi(stress, 'stress', system)));
  return Math.max(1, Math.floor(Math.log10(shown)) + 1 - ROUNDED[system]);
};

/** One edge with its unit. */
export const edgeText = (stress: number, system: UnitSystem): string =>
  formatQuantity(stress, 'stress', system, { digits: digitsOf(stress, system) });

/** From one edge to the other. */
export function windowText(low: number, high: number, system: UnitSystem): string {
  const { number } = formatParts(low, 'stress', system, { digits: digitsOf(low, system) });
  return `${number} to ${edgeText(high, system)}`;
}

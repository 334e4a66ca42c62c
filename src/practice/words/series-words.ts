/** How a series is taken, in words. */
import type { TakenSeries } from '../../core/bench.ts';

/** One line: its number, its clamps, its hands. */
export function handlingInWords({ attempt, clamps, hands }: TakenSeries): string {
  const how = clamps === 'careful' ? 'clamps set with care' : 'clamps set in a hurry';
  return `Series ${attempt + 1}: ${how}, ${hands === 'gloved' ? 'gloves' : 'bare hands'}.`;
}

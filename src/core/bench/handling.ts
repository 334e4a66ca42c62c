/**
 * How a series on the bench is taken: clamps set in haste or with care, the bar held in bare hands or in gloves.
 * Units: minutes; shares have none.
 * Source: common practice, no source.
 */
import type { BenchMill } from './mill.ts';

/** What the learner decides before a series. */
export interface Handling {
  readonly clamps: 'quick' | 'careful';
  readonly hands: 'bare' | 'gloved';
}

const CAREFUL_SLIPS = 0.05; // of the slips of a clamp that was set in haste
const GLOVED_WARMS = 0.1; // of the warming by bare hands
const MINUTES = { quick: 1, careful: 6, bare: 1, gloved: 1.5 } as const; // to clamp; for one reading

/** The mill as it answers to such handling. */
export function handledMill<Mill extends BenchMill>(mill: Mill, { clamps, hands }: Handling): Mill {
  const { slipChance, barWarming } = mill.hidden;
  const hidden = {
    ...mill.hidden,
    slipChance: clamps === 'careful' ? CAREFUL_SLIPS * slipChance : slipChance,
    barWarming: hands === 'gloved' ? GLOVED_WARMS * barWarming : barWarming,
  };
  return { ...mill, hidden };
}

/** Minutes that a series takes, with so many readings after the clamps were set. */
export const minutesOf = ({ clamps, hands }: Handling, readings: number): number =>
  MINUTES[clamps] + MINUTES[hands] * readings;

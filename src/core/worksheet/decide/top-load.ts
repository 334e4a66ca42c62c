/**
 * Whether the load that a measurement is to go up to stays within the limits, and the highest that does.
 * Units: SI only (N·m of a torque, Pa of a pressure).
 * Source: definition; the limits are those of rails.ts, held against the prediction with its expanded uncertainty.
 */
import type { Worksheet } from '../inputs.ts';
import { ready } from '../outcome.ts';
import type { Chain } from '../predict/chain.ts';
import { worksheetPredicted } from '../predict/prediction.ts';
import { type WorksheetGuard, worksheetRails } from './rails.ts';

/** A load that goes too far, by what, and the highest that does not, where there is one. */
export interface TopLoadTrouble {
  readonly guard: WorksheetGuard;
  readonly highest: number | undefined; // N·m or Pa
}

const LIMITS: ReadonlySet<WorksheetGuard['code']> = new Set([
  'tooThickForWheel',
  'aboveBandLimit',
  'aboveMillLimit',
  'beyondYieldShare',
  'mayExceedBandLimit',
  'mayExceedMillLimit',
]);

const halvings = 20; // the load to a millionth

/** The first limit that the band may pass at a load; none where no load arrives at it yet. */
function limitAt(worksheet: Worksheet, chain: Chain, load: number): WorksheetGuard | undefined {
  const predicted = worksheetPredicted(chain.theory, ready({ torque: load }));
  if (!predicted.ready) return undefined;
  const { stress, expandedUncertainty } = predicted;
  const reached = { stress, expandedUncertainty, input: 'target.stress' } as const;
  const rails = worksheetRails(worksheet, reached, chain);
  return rails.ready ? rails.found.find(({ code }) => LIMITS.has(code)) : undefined;
}

/** What is wrong with a top load; undefined while nothing is, or nothing can be told. */
export function topLoadTrouble(
  worksheet: Worksheet,
  chain: Chain,
  load: number,
): TopLoadTrouble | undefined {
  const guard = limitAt(worksheet, chain, load);
  if (!guard) return undefined;
  let [low, high] = [0, load];
  for (let i = 0; i < halvings; i++) {
    const middle = (low + high) / 2;
    if (limitAt(worksheet, chain, middle)) high = middle;
    else low = middle;
  }
  const pulls = worksheetPredicted(chain.theory, ready({ torque: low })).ready;
  return { guard, highest: pulls ? low : undefined };
}

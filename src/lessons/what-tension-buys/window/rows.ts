/**
 * The edges of the window as the figure lists them: what asks for tension first, then what sets bounds to it; each with
 * why it is there.
 * Units: SI.
 */

import type { HighCause, LowCause } from '../../../core/tightness.ts';
import { teller } from '../../../figures/teller.ts';
import { whatTensionBuys } from '../model.ts';
import type { State } from '../state.ts';
import { type Edges, edgesOf, windowOf } from './edges.ts';

const say = teller(whatTensionBuys);

/** One edge. */
export interface EdgeRow {
  readonly cause: keyof Edges;
  readonly name: string;
  readonly isLow: boolean;
  readonly stress: number; // Pa
  readonly binds: boolean;
  /** What it stands on, in a few words. */
  readonly because: string;
}

/** How the causes are called, and what is wrong beyond their edge. */
export const CAUSES: Readonly<
  Record<LowCause | HighCause, { readonly name: string; readonly beyond: string }>
> = {
  straightness: { name: 'straightness', beyond: 'the push moves the teeth too far' },
  grip: { name: 'grip', beyond: 'the band is too near slipping' },
  life: { name: 'life', beyond: 'it costs too much of the band’s life' },
  millMaker: { name: 'the mill’s maker', beyond: 'the mill’s maker allows less' },
  bandMaker: { name: 'the band’s maker', beyond: 'the band’s maker allows less' },
  yield: { name: 'bent steel', beyond: 'too much for the bent steel' },
};

const LOWS: readonly (keyof Edges)[] = ['straightness', 'grip'];
/** The causes as they are listed. */
export const ORDER: readonly (keyof Edges)[] = [...LOWS, 'life', 'millMaker', 'yield'];

function becauseOf(state: State): Readonly<Record<keyof Edges, string>> {
  return {
    straightness: `the push moves the teeth ${say(state, 'movement', 2)}`,
    grip: `slip margin ${say(state, 'leastMargin')} at ${say(state, 'power', 2)}`,
    life: `${say(state, 'lifeKept')} of that at ${say(state, 'today')}, exponent ${say(state, 'exponent')}`,
    millMaker: `${say(state, 'millLimit')} on the wheel`,
    yield: `with the bend, ${say(state, 'yieldShare')} of yield strength`,
  };
}

/** The window and its edges, top to bottom. */
export function rowsOf(state: State) {
  const edges = edgesOf(state.values);
  const window = windowOf(edges);
  const because = becauseOf(state);
  const binding = [window.low?.cause, window.high?.cause];
  const rows = ORDER.map(
    (cause): EdgeRow => ({
      cause,
      name: CAUSES[cause].name,
      isLow: LOWS.includes(cause),
      stress: edges[cause],
      binds: binding.includes(cause),
      because: because[cause],
    }),
  );
  return { rows, window };
}

/**
 * The three tensions side by side, each with both guide spacings.
 * Units: SI.
 */
import type { State } from '../state.ts';
import { CLOSER, PARTS, type Pushed, pushedSpan } from './pushed-span.ts';

/** One of the tensions. */
export interface Row {
  readonly key: 'own' | 'half' | 'quarter';
  readonly stress: number; // Pa
  readonly span: number; // m
  /** At the reader's guide spacing, and with the guides half as far apart. */
  readonly wide: Pushed;
  readonly close: Pushed;
}

const KEYS = ['own', 'half', 'quarter'] as const;

/** The rows, the reader's own tension first. */
export function rowsOf({ stress, span }: State['values']): readonly Row[] {
  return KEYS.map((key, place) => {
    const tension = stress * (PARTS[place] ?? 1);
    return {
      key,
      stress: tension,
      span,
      wide: pushedSpan(tension, span),
      close: pushedSpan(tension, CLOSER * span),
    };
  });
}

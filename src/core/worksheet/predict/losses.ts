/**
 * What is believed of the losses in the worksheet's screw: a range of thread friction or of efficiency. What is not
 * known is a range too.
 * Units: none.
 * Source: definition; what stands for what is not known, assumptions.ts.
 */

import type { WorksheetTensioner } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import {
  dryThreadFriction,
  greasedThreadFriction,
  unknownThreadFriction,
} from '../own-assumptions.ts';

/** The two ends of a range. */
export interface LossRange {
  readonly of: 'friction' | 'efficiency';
  readonly low: number;
  readonly high: number;
  readonly isAssumed: boolean;
}

/** The range believed; refused where it is the wrong way round or an efficiency exceeds 1. */
export function worksheetLossRange({ friction }: WorksheetTensioner): Outcome<LossRange> {
  const { kind } = friction;
  if (kind === 'dry') return assumed(dryThreadFriction);
  const isEmpty = friction.low === undefined && friction.high === undefined;
  if (kind === 'greased') return assumed(greasedThreadFriction);
  if (kind === 'unknown' || isEmpty) return assumed(unknownThreadFriction);
  const ends = knownInputs({
    low: ['tensioner.friction.low', friction.low],
    high: ['tensioner.friction.high', friction.high],
  });
  return whenReady({ ends }, ({ ends: { low, high } }) => {
    if (low > high)
      return refused('rangeBackwards', { low, high }, [
        'tensioner.friction.low',
        'tensioner.friction.high',
      ]);
    if (kind === 'efficiency' && high > 1)
      return refused('efficiencyAboveOne', { high }, ['tensioner.friction.high']);
    return ready({ of: kind, low, high, isAssumed: false });
  });
}

const assumed = (range: { readonly low: number; readonly high: number }): Outcome<LossRange> =>
  ready({ of: 'friction', ...range, isAssumed: true });

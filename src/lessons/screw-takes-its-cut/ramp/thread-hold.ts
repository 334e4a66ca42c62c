/**
 * How surely the thread holds by itself, seeing that its friction is only guessed.
 * Units: none.
 * Source: self-locking limit of core/screw; the doubt after `screw-friction`.
 */
import { threadFrictionHalfWidth } from '../../../core/assumptions.ts';
import type { State } from '../state.ts';

/** Holds even with the least friction believed, holds only with more than that, or slides. */
export type ThreadHold = 'firmly' | 'barely' | 'not';

/** The hold of a thread from its friction and the friction at which it just holds. */
export function threadHold({
  holds,
  threadFriction,
  holdingFriction,
}: Pick<State['values'], 'holds' | 'threadFriction' | 'holdingFriction'>): ThreadHold {
  if (holds !== 1) return 'not';
  return threadFriction - threadFrictionHalfWidth >= holdingFriction ? 'firmly' : 'barely';
}

/**
 * In a word, how a steel thread with so much friction is kept.
 * Units: friction has no unit.
 * Source: ranges of friction, `screw-friction`, from memory.
 */
import { THREAD_FRICTION } from '../../models/handbook-friction.ts';

/** The word; two of them where the handbook's ranges overlap. */
export function threadWord(friction: number): string {
  const { oiled, dry } = THREAD_FRICTION;
  if (friction < oiled.low) return 'greased';
  if (friction < dry.low) return 'oiled';
  return friction <= oiled.high ? 'oiled or dry' : 'dry';
}

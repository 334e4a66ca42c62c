/**
 * What is under the lid for what the learner has done. Apart, for it comes with the lid alone.
 * Units: SI (Pa, N·m).
 * Source: definition.
 */
import { type Lifted, liftedLid } from '../../core/bench.ts';
import { answerOf, doneAt, topTorqueOf } from '../state/answering.ts';
import type { View } from '../state/view.ts';
import { lastNote } from '../tries/heard.ts';

/** It; undefined while no row has a torque. */
export const liftedFor = (view: View): Lifted | undefined =>
  topTorqueOf(view) > 0
    ? liftedLid(view.mill, doneAt(view), { answer: answerOf(view), note: lastNote(view) })
    : undefined;

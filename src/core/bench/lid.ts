/**
 * The lid of the bench lifted: the truth at the learner's top torque, what the rows measure there, and the account of
 * what each mistake cost, from the truth to the answer.
 * Units: SI only (Pa, m, N·m).
 * Source: definition.
 */
import type { Refusal } from '../worksheet/outcome.ts';
import { benchAccount, type Line, type Stage } from './costs.ts';
import type { LevelMill } from './levels.ts';
import { notedStress } from './noted.ts';
import { type HeardNote, type Plucked, pluckedStress, type Span } from './plucked.ts';
import { pricedStages } from './priced.ts';
import { benchStress } from './series.ts';
import { wouldLead } from './working-out.ts';
import { type Done, putRight, wrongRows } from './wrong-rows.ts';

/** What is under the lid. */
export interface Lifted {
  readonly topTorque: number; // N·m, of the rows
  readonly truth: number; // Pa, there
  readonly measured: Span | undefined; // Pa
  readonly refusal: Refusal | undefined; // why the rows give no stress
  readonly stages: readonly Stage[];
  readonly isByUpperLine: boolean; // the stages are, for the worksheet finds no stress at some of them
  readonly end: number | undefined; // Pa, where the account ends
  readonly lines: readonly Line[];
  readonly slips: ReturnType<typeof wouldLead>; // with the rows put right
  readonly plucked: Plucked | undefined;
}

/** What the learner says, and the last note that was heard. */
export interface Said {
  readonly answer: number | undefined; // Pa, the stress at the top torque
  readonly note?: HeardNote | undefined;
}

/**
 * Lifts the lid.
 * @throws RangeError without rows above the slack band, or where a row is no look that was taken
 */
export function liftedLid(mill: LevelMill, done: Done, { answer, note }: Said): Lifted {
  const topTorque = Math.max(0, ...done.rows.map(({ torque }) => torque));
  if (topTorque === 0) throw new RangeError('rows must be at least one above 0 N·m (was none)');
  const truth = benchStress(mill, topTorque);
  const measured = notedStress(mill, done.rows, done.believed);
  const found = measured.ready ? measured : undefined;
  const { stages, isByUpperLine } = pricedStages(mill, done, { truth, answer });
  return {
    topTorque,
    truth,
    measured: found && { stress: found.stress, low: found.low, high: found.high },
    refusal: measured.ready ? undefined : measured.refusal,
    stages,
    isByUpperLine,
    end: stages.at(-1)?.stress,
    lines: benchAccount(truth, stages),
    slips: wouldLead(mill, putRight(done.rows, wrongRows(mill, done)), done.believed),
    plucked: note && pluckedStress(mill, note, done.believed, found),
  };
}

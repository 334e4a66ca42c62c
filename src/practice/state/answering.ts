/**
 * What the learner has done, as the core wants it to lift the lid.
 * Units: SI (N·m, m, Pa).
 * Source: definition.
 */
import type { Done } from '../../core/bench.ts';
import { boxReading, type View } from './view.ts';

/** The no-load torque that the learner goes by, N·m: as typed, or as the owner told; undefined where neither can be used. */
function dragOf({ bench, face, mill }: View): number | undefined {
  const read = boxReading(bench, 'drag', face);
  if (read.ok && read.value >= 0) return read.value;
  return bench.typed.drag.trim() === '' ? mill.told.dragTorque : undefined;
}

/** Everything that was done and noted; rows that cannot be read are left out. */
export function doneAt(view: View): Done {
  return {
    taken: view.bench.taken,
    rows: view.rows.flatMap(({ series, place, torque, value }) =>
      value === undefined ? [] : [{ series, place, torque, dial: value }],
    ),
    believed: { dragTorque: dragOf(view), isMeasured: view.bench.isMeasured },
  };
}

/** The number in the table of each row that can be read. */
export const rowNumbers = ({ rows }: Pick<View, 'rows'>): readonly number[] =>
  rows.flatMap(({ value }, at) => (value === undefined ? [] : [at + 1]));

/** The highest torque among the rows that can be read, N·m; 0 without any. */
export const topTorqueOf = (view: View): number =>
  Math.max(0, ...doneAt(view).rows.map(({ torque }) => torque));

/** The learner's answer, Pa; undefined while it cannot be read. */
export function answerOf({ bench, face }: View): number | undefined {
  const read = boxReading(bench, 'answer', face);
  return read.ok ? read.value : undefined;
}

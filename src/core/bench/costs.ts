/**
 * The way from the truth to the learner's answer, mistake by mistake: each stage is the stress with its own mistake and
 * all before it, so that the costs add up. What acted on the dial is taken out by running the same series without it,
 * with the same chances.
 * Units: SI only (Pa, m, N·m).
 * Source: definition; the relations are those of the bench and of the worksheet.
 */
import type { LevelMill } from './levels.ts';
import type { HiddenMill } from './mill.ts';
import type { NotedRow } from './noted.ts';
import {
  byLine,
  type FoundSlip,
  foundSlip,
  type Method,
  type Slip,
  type Working,
} from './working-out.ts';
import { type Done, putRight, shownAt, type WrongRow, wrongRows } from './wrong-rows.ts';

/** What puts the answer off the truth, in the order in which it is added; `sum`: the learner's own, beyond the slips that are known. */
export type Cause =
  | 'scatter'
  | 'toe'
  | 'warmed'
  | 'slipped'
  | 'noLoad'
  | Slip
  | 'misread'
  | 'turns'
  | 'sum';

/** The stress with a cause and all before it. */
export interface Stage {
  readonly cause: Cause;
  readonly isMade: boolean; // otherwise the stress is that of the stage before
  readonly stress: number | undefined; // Pa; undefined: the rows give none
  readonly series: readonly number[]; // whose rows it moved, by their attempts; none: all, or no rows
  readonly rows: readonly WrongRow[];
}

/** One line of the account: what the stages cost together, for those before the last give no stress. */
export interface Line {
  readonly stages: readonly Stage[];
  readonly cost: number | undefined; // Pa, above 0 where it makes the stress look higher; undefined: no stress at the end
}

const DRAG_CLOSE = 0.2; // N·m, by which a no-load torque may be off
const ALL_STILL = { coilShift: 0, barWarming: 0, slipChance: 0 } as const;

type Rows = readonly NotedRow[];

/** The rows as they would have been with something hidden changed. */
function rerun(mill: LevelMill, { taken }: Done, rows: Rows, changed: Partial<HiddenMill>): Rows {
  const was = shownAt(mill, { taken, rows });
  const moved = shownAt(mill, { taken, rows }, changed);
  return rows.map((row, at) => ({
    ...row,
    dial: row.dial + ((moved[at] as number) - (was[at] as number)) * mill.known.dialStep,
  }));
}

/** The series whose rows differ, but for a shift of them all. */
function seriesMoved(step: number, before: Rows, after: Rows): readonly number[] {
  const shift = new Map<number, number>();
  const moved = before.filter(({ series, dial }, at) => {
    const by = Math.round(((after[at] as NotedRow).dial - dial) / step);
    if (!shift.has(series)) shift.set(series, by);
    return shift.get(series) !== by;
  });
  return [...new Set(moved.map(({ series }) => series))];
}

const seriesOf = (rows: readonly WrongRow[]) => [...new Set(rows.map(({ series }) => series))];

/** What hides in the readings, one thing after the other. */
function hiddenStages(mill: LevelMill, done: Done, right: Rows, working: Working): Stage[] {
  const { coilShift, barWarming } = mill.hidden;
  const still = rerun(mill, done, right, ALL_STILL);
  const added: readonly (readonly [Cause, Partial<HiddenMill>])[] = [
    ['toe', { ...ALL_STILL, coilShift }],
    ['warmed', { ...ALL_STILL, coilShift, barWarming }],
    ['slipped', {}],
  ];
  let before = still;
  const stages = added.map(([cause, changed]): Stage => {
    const rows = rerun(mill, done, right, changed);
    const series = seriesMoved(mill.known.dialStep, before, rows);
    before = rows;
    return { cause, isMade: series.length > 0, stress: working(rows), series, rows: [] };
  });
  const scatter = { cause: 'scatter', isMade: true, stress: working(still), series: [], rows: [] };
  return [scatter as Stage, ...stages];
}

/** What was written wrong, turns of the hand last. */
function writtenStages(
  done: Done,
  wrong: readonly WrongRow[],
  working: Working,
  before: Rows,
): Stage[] {
  const [turns, misread] = [true, false].map((are) =>
    wrong.filter(({ how }) => (how === 'turns') === are),
  ) as [WrongRow[], WrongRow[]];
  const stage = (cause: Cause, rows: readonly WrongRow[], written: Rows): Stage => ({
    cause,
    isMade: rows.length > 0,
    stress: working(written),
    series: seriesOf(rows),
    rows,
  });
  const noTurns = misread.length > 0 ? putRight(done.rows, turns) : before;
  return [stage('misread', misread, noTurns), stage('turns', turns, done.rows)];
}

/** What the account runs between. */
export interface Learner {
  readonly truth: number; // Pa
  readonly answer: number | undefined; // Pa
}

/**
 * Every stage from the truth to the answer, all by one method.
 * @throws RangeError where a row is no look of a series that was taken
 */
export function benchStages(
  mill: LevelMill,
  done: Done,
  learner: Learner,
  method: Method = byLine,
): readonly Stage[] {
  const { rows, believed } = done;
  const { truth, answer } = learner;
  const wrong = wrongRows(mill, done);
  const right = putRight(rows, wrong);
  const { dragTorque } = mill.hidden;
  const dragOff = Math.abs((believed.dragTorque ?? 0) - dragTorque);
  const isDragOff = dragOff > DRAG_CLOSE;
  const own = method(mill, believed);
  const knowing = isDragOff ? method(mill, { ...believed, dragTorque }) : own;
  const slip =
    answer === undefined ? undefined : foundSlip(mill, { rows, believed, truth, answer }, method);
  const plain = (cause: Cause, isMade: boolean, stress: number | undefined): Stage => ({
    cause,
    isMade,
    stress,
    series: [],
    rows: [],
  });
  return [
    ...hiddenStages(mill, done, right, knowing),
    plain('noLoad', isDragOff, own(right)),
    ...slipStages(slip, right, plain),
    ...writtenStages(done, wrong, slip?.working ?? own, right),
    ...(answer === undefined ? [] : [plain('sum', true, answer)]),
  ];
}

function slipStages(
  slip: FoundSlip | undefined,
  right: Rows,
  plain: (cause: Cause, isMade: boolean, stress: number | undefined) => Stage,
): Stage[] {
  return slip ? [plain(slip.slip, true, slip.working(right))] : [];
}

/** The costs line by line; they add up from the truth to the last stress that there is. */
export function benchAccount(truth: number, stages: readonly Stage[]): readonly Line[] {
  const lines: Line[] = [];
  let [last, waiting]: [number, Stage[]] = [truth, []];
  for (const stage of stages.filter(({ isMade }) => isMade)) {
    waiting.push(stage);
    if (stage.stress === undefined) continue;
    lines.push({ stages: waiting, cost: stage.stress - last });
    [last, waiting] = [stage.stress, []];
  }
  return waiting.length > 0 ? [...lines, { stages: waiting, cost: undefined }] : lines;
}

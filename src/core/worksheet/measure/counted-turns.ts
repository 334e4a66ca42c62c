/**
 * The whole turns of the dial's hand that the worksheet's readings tell by themselves, where the hand alone was noted: it
 * jumps back by more than half a turn each time it passes zero.
 * Units: SI only (m, N·m).
 * Source: definition; half a turn, our choice: a step that is nearer to a whole turn back than to none.
 */
import type { Worksheet } from '../inputs.ts';
import { isUsable } from '../known-inputs.ts';
import { type UsableRow, worksheetRows } from './readings.ts';

/** A row whose whole turns are fewer than the hand's passes up to it. */
export interface CountedTurns {
  readonly row: number; // place in worksheet.readings
  readonly turns: number; // to be written there
  readonly passes: boolean; // the hand passed zero between the row before and this one
}

interface Dial {
  readonly way: 1 | -1; // of the number as the band stretches
  readonly travelPerTurn: number; // m
}

const most = 0.5; // of a turn, that one step moves the hand on, or turns it back without a pass

const littleMore = 1.01; // times: the hand's highest and lowest readings are never a whole turn apart

/** What one step says: the hand passed zero, or did not; undefined where that is not plain. */
function passed({ way, travelPerTurn }: Dial, before: UsableRow, row: UsableRow) {
  if (before.torque === 0) return false; // slack, the dial moves as it will
  const step = (way * (row.dial - before.dial)) / travelPerTurn;
  if (Math.abs(step) <= most) return false;
  return step < 0 && step > -1 && row.torque > before.torque ? true : undefined;
}

/** The count at each row of one series; nothing where some step is not plain, or more turns are written than are counted. */
function countedIn(rows: readonly UsableRow[], dial: Dial): readonly CountedTurns[] {
  let turns = rows[0]?.wholeTurns ?? 0;
  const counted: CountedTurns[] = [];
  for (const [at, row] of rows.entries()) {
    const before = rows[at - 1];
    const passes = before ? passed(dial, before, row) : false;
    if (passes) turns += 1;
    if (passes === undefined || row.wholeTurns > turns) return [];
    if (row.wholeTurns < turns) counted.push({ row: row.row, turns, passes });
  }
  return counted;
}

/** What `tell` says of each series; nothing until it is said which way the dial runs. */
function ofEachSeries(
  worksheet: Worksheet,
  tell: (rows: readonly UsableRow[], way: Dial['way']) => readonly CountedTurns[],
): readonly CountedTurns[] {
  const { dialRunsBackwards, dialWritten } = worksheet.rig;
  const rows = worksheetRows(worksheet);
  if (dialRunsBackwards === undefined || dialWritten === 'together' || !rows.ready) return [];
  const way = dialRunsBackwards ? -1 : 1;
  return rows.firsts.flatMap(({ series }) =>
    tell(
      rows.used.filter((row) => row.series === series),
      way,
    ),
  );
}

/** The rows that lack turns, of all series; none until it is said which way the dial runs and how far a turn is. */
export function countedTurns(worksheet: Worksheet): readonly CountedTurns[] {
  const { travelPerTurn } = worksheet.rig;
  if (!isUsable(travelPerTurn)) return [];
  return ofEachSeries(worksheet, (rows, way) => countedIn(rows, { way, travelPerTurn }));
}

/** Whether most steps of a series go the way that the dial is said to run. */
function mostlyGoesOn(rows: readonly UsableRow[], way: Dial['way']): boolean {
  const steps = rows.slice(1).map(({ dial }, at) => way * (dial - (rows[at]?.dial ?? dial)));
  return steps.filter((step) => step > 0).length > steps.length / 2;
}

/**
 * The rows just before which the hand may have passed zero, while nobody has said how far a turn is: those that a turn
 * of little more than the readings span would tell, the shortest that can be.
 */
export function passesWithoutTravel(worksheet: Worksheet): readonly number[] {
  if (isUsable(worksheet.rig.travelPerTurn)) return [];
  const counted = ofEachSeries(worksheet, (rows, way) => {
    const dials = rows.map(({ dial }) => dial);
    const travelPerTurn = littleMore * (Math.max(...dials) - Math.min(...dials));
    return mostlyGoesOn(rows, way) ? countedIn(rows, { way, travelPerTurn }) : [];
  });
  return counted.filter(({ passes }) => passes).map(({ row }) => row);
}

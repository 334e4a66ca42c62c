/**
 * What each mistake on the bench costs: the stress that the rows measure, less that of the same rows without the mistake.
 * A mistake that acted on the dial is taken out by running the same series again without it, with the same chances.
 * Units: SI only (Pa, m, N·m).
 * Source: definition; the relations are those of the bench and of the worksheet.
 */
import type { LevelMill } from './levels.ts';
import { benchLooks, stepsPerTurn, type TakenSeries } from './looks.ts';
import type { HiddenMill } from './mill.ts';
import { type Believed, type NotedRow, notedStress } from './noted.ts';

/** A mistake that acts on the measured stress. */
export type Mistake = 'misread' | 'turns' | 'slipped' | 'warmed' | 'noLoad';

/** One mistake: whether it was made, and what it costs at the top torque. */
export interface Cost<Name extends string = Mistake> {
  readonly mistake: Name;
  readonly isMade: boolean;
  readonly cost: number | undefined; // Pa, above 0 where it makes the stress look higher; undefined: the rows give no stress, as they are or without it
  readonly without: number | undefined; // Pa, what it would be without the mistake; undefined: the rows give none then either
}

/** What was done and noted at a mill. */
export interface Done {
  readonly taken: readonly TakenSeries[]; // in the order of their attempts
  readonly rows: readonly NotedRow[];
  readonly believed: Believed;
}

const CLOSE = 1; // step of the dial by which a reading may be off
const DRAG_CLOSE = 0.2; // N·m, by which a no-load torque may be off

type Rows = Done['rows'];

/** What the dial showed at each row, in steps, on the mill as it is or with something hidden changed. */
function shownAt(
  mill: LevelMill,
  { taken, rows }: Done,
  changed: Partial<HiddenMill> = {},
): readonly number[] {
  const other = { ...mill, hidden: { ...mill.hidden, ...changed } };
  const all = taken.map((series) => benchLooks(other, series).looks);
  return rows.map(({ series, place }) => {
    const look = all[series]?.[place];
    if (!look) throw new RangeError(`rows must be looks that were taken (was ${series}, ${place})`);
    return look.position;
  });
}

/** By how many whole turns a reading is off, 0 where it is right, undefined where it is off in another way. */
function turnsOff(off: number, perTurn: number): number | undefined {
  const turns = Math.round(off / perTurn);
  return Math.abs(off - turns * perTurn) <= CLOSE ? turns : undefined;
}

/** The rows with what the dial showed wherever a reading is off in the way that is asked for. */
function reread(
  mill: LevelMill,
  done: Done,
  isOff: (turns: number | undefined) => boolean,
): { readonly rows: Rows; readonly isMade: boolean } {
  const { dialStep } = mill.known;
  const shown = shownAt(mill, done);
  const perTurn = stepsPerTurn(mill);
  const mended = done.rows.map((row, at) => {
    const position = shown[at] as number;
    return isOff(turnsOff(row.dial / dialStep - position, perTurn))
      ? { ...row, dial: position * dialStep }
      : row;
  });
  return { rows: mended, isMade: mended.some((row, at) => row !== done.rows[at]) };
}

/** The rows as they would have been with something hidden changed. */
function rerun(mill: LevelMill, done: Done, changed: Partial<HiddenMill>) {
  const [was, without] = [shownAt(mill, done), shownAt(mill, done, changed)];
  const moved = without.map((position, at) => position - (was[at] as number));
  const rows = done.rows.map((row, at) => ({
    ...row,
    dial: row.dial + (moved[at] as number) * mill.known.dialStep,
  }));
  return { rows, isMade: moved.some((steps) => steps !== 0) };
}

/**
 * What each mistake costs.
 * @throws RangeError where a row is no look of a series that was taken
 */
export function benchCosts(mill: LevelMill, done: Done): readonly Cost[] {
  const { rows, believed } = done;
  const { dragTorque } = mill.hidden;
  const stressOf = (taken: Rows, by: Believed = believed) => notedStress(mill, taken, by)?.stress;
  const asNoted = stressOf(rows);
  const costOf = (mistake: Mistake, isMade: boolean, without: number | undefined): Cost => ({
    mistake,
    isMade,
    cost: asNoted === undefined || without === undefined ? undefined : asNoted - without,
    without,
  });
  const ofRows = (mistake: Mistake, { rows: mended, isMade }: { rows: Rows; isMade: boolean }) =>
    costOf(mistake, isMade, isMade ? stressOf(mended) : asNoted);
  const dragOff = Math.abs((believed.dragTorque ?? 0) - dragTorque);
  return [
    ofRows(
      'misread',
      reread(mill, done, (turns) => turns === undefined),
    ),
    ofRows(
      'turns',
      reread(mill, done, (turns) => turns !== undefined && turns !== 0),
    ),
    ofRows('slipped', rerun(mill, done, { slipChance: 0 })),
    ofRows('warmed', rerun(mill, done, { barWarming: 0 })),
    costOf('noLoad', dragOff > DRAG_CLOSE, stressOf(rows, { ...believed, dragTorque })),
  ];
}

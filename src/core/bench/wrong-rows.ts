/**
 * The rows whose reading is not what the dial showed, and in which way each is off.
 * Units: SI only (m).
 * Source: definition; how people misread a dial, common practice, no source.
 */
import type { LevelMill } from './levels.ts';
import { benchLooks, stepsPerTurn, type TakenSeries } from './looks.ts';
import type { HiddenMill } from './mill.ts';
import type { Believed, NotedRow } from './noted.ts';

/** What was done and noted at a mill. */
export interface Done {
  readonly taken: readonly TakenSeries[]; // in the order of their attempts
  readonly rows: readonly NotedRow[];
  readonly believed: Believed;
}

/** A row that is off. */
export interface WrongRow {
  readonly at: number; // its place among the rows
  readonly series: number;
  readonly shown: number; // m, what the dial showed there
  readonly how: 'turns' | 'sign' | 'unit' | 'misread';
}

const CLOSE = 1.01; // steps of the dial: a reading may be one off
const INCH = 25.4; // the other unit of a dial, as a factor

/** What the dial showed at each row, in steps, on the mill as it is or with something hidden changed. */
export function shownAt(
  mill: LevelMill,
  { taken, rows }: Pick<Done, 'taken' | 'rows'>,
  changed: Partial<HiddenMill> = {},
): readonly number[] {
  const other = { ...mill, hidden: { ...mill.hidden, ...changed } };
  const all = taken.map((series) => benchLooks(other, series));
  return rows.map(({ series, place }) => {
    const { looks, released } = all[series] ?? { looks: [] };
    const look = place === looks.length ? released : looks[place];
    if (!look) throw new RangeError(`rows must be looks that were taken (was ${series}, ${place})`);
    return look.position;
  });
}

/** In which way a reading is off, both in steps; undefined where it is right. */
function howOff(read: number, shown: number, perTurn: number): WrongRow['how'] | undefined {
  const isNear = (other: number) => Math.abs(read - other) <= CLOSE;
  if (isNear(shown)) return undefined;
  if (isNear(shown + perTurn * Math.round((read - shown) / perTurn))) return 'turns';
  if (isNear(-shown)) return 'sign';
  return isNear(INCH * shown) || isNear(shown / INCH) ? 'unit' : 'misread';
}

/**
 * Every row that is off.
 * @throws RangeError where a row is no look of a series that was taken
 */
export function wrongRows(
  mill: LevelMill,
  done: Pick<Done, 'taken' | 'rows'>,
): readonly WrongRow[] {
  const { dialStep } = mill.known;
  const shown = shownAt(mill, done);
  return done.rows.flatMap(({ dial, series }, at) => {
    const position = shown[at] as number;
    const how = howOff(dial / dialStep, position, stepsPerTurn(mill));
    return how ? [{ at, series, shown: position * dialStep, how }] : [];
  });
}

/** The rows with what the dial showed wherever they are among the wrong ones. */
export const putRight = (
  rows: readonly NotedRow[],
  wrong: readonly WrongRow[],
): readonly NotedRow[] =>
  rows.map((row, at) => {
    const found = wrong.find((each) => each.at === at);
    return found ? { ...row, dial: found.shown } : row;
  });

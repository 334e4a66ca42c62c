/**
 * The stress by a straight line through the upper rows: where the worksheet finds none, this still gives a number, so
 * that each mistake can be priced. Series have one slope and a zero each. A row half a turn of the hand off the others
 * is left out, as an eye would leave it out.
 * Units: SI only (m, N·m, Pa).
 * Source: definition; Hooke's law from elasticity.ts; the middle slope is that of Theil and Sen, from memory.
 */
import { bandSteel } from '../assumptions.ts';
import { stress as stressOfStretch } from '../elasticity.ts';
import { fitLine } from '../line.ts';
import { mean } from '../statistics/moments.ts';
import { worksheetDrag } from '../worksheet/torque-at-hand.ts';
import { type NotedRow, notedWorksheet } from './noted.ts';
import type { Method } from './working-out.ts';

const UPPER = 0.5; // of the way from the no-load torque to the top: from there up the band is straight
const FEWEST = 3; // rows of a line
const APART = 1e-6; // N·m, what torques of a line differ by at least
const FAR = 0.5; // of a turn of the hand: no straight band is so crooked

type Rows = readonly NotedRow[];
type Value = (row: NotedRow) => number;

/** The rows of the line: the upper ones, or all under load where those are too few. */
function rowsOfLine(rows: Rows, dragTorque: number, topTorque: number): Rows {
  const from = dragTorque + UPPER * (topTorque - dragTorque);
  const upper = rows.filter(({ torque }) => torque >= from);
  const isLine = new Set(upper.map(({ torque }) => torque)).size >= FEWEST;
  return isLine ? upper : rows.filter(({ torque }) => torque > dragTorque);
}

/** The values of the rows, less what stands for their series. */
function fromOwn(rows: Rows, value: Value, standFor: (values: readonly number[]) => number) {
  return rows.map((row) => {
    const own = rows.filter(({ series }) => series === row.series);
    return value(row) - standFor(own.map(value));
  });
}

const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;

const isLine = (rows: Rows): boolean =>
  rows.length >= FEWEST &&
  fromOwn(rows, ({ torque }) => torque, mean).some((off) => Math.abs(off) > APART);

/** The slope between any two rows of a series, the middle one of all. */
function middleSlope(rows: Rows): number {
  const slopes = rows.flatMap((one, at) =>
    rows
      .slice(at + 1)
      .filter(
        ({ series, torque }) => series === one.series && Math.abs(torque - one.torque) > APART,
      )
      .map(({ dial, torque }) => (dial - one.dial) / (torque - one.torque)),
  );
  return middle(slopes);
}

/** The rows without those that are far off the others, as long as a line is left. */
function withoutFar(rows: Rows, turn: number): Rows {
  const slope = middleSlope(rows);
  const off = fromOwn(rows, ({ dial, torque }) => dial - slope * torque, middle);
  const near = rows.filter((_, at) => Math.abs(off[at] as number) < FAR * turn);
  return isLine(near) ? near : rows;
}

/** The line; no stress from fewer than three rows under load, or at one torque in each series. */
export const byUpperLine: Method = (mill, believed) => (rows) => {
  const drag = worksheetDrag(notedWorksheet(mill, rows, believed));
  const topTorque = Math.max(0, ...rows.map(({ torque }) => torque));
  if (!drag.ready || topTorque <= drag.dragTorque) return undefined;
  const upper = rowsOfLine(rows, drag.dragTorque, topTorque);
  if (!isLine(upper)) return undefined;
  const { gaugeLength, dialTurn } = mill.known;
  const used = withoutFar(upper, dialTurn);
  const torques = fromOwn(used, ({ torque }) => torque, mean);
  const { slope } = fitLine(
    torques,
    fromOwn(used, ({ dial }) => dial, mean),
  );
  const way = mill.told.runsBackwards ? -1 : 1;
  const elongation = way * slope * (topTorque - drag.dragTorque);
  return stressOfStretch({ elongation, gaugeLength }, bandSteel.youngsModulus);
};

/**
 * What follows from a bench: the mill, what its dial shows, what was read in each row, how long it took.
 * Units: SI (N·m, m, Pa); minutes; positions in steps of the dial.
 * Source: definition.
 */
import {
  type BenchLook,
  type BenchLooks,
  benchLooks,
  benchMillAt,
  benchStress,
  coilSetLeft,
  type LevelMill,
  minutesOf,
} from '../../core/bench.ts';
import { type Face, turnOf, unitsOfFace } from '../../figures/dial/faces.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { parseQuantity } from '../../units/reading/parse-quantity.ts';
import { type Reading, refusal } from '../../units/reading/refusal.ts';
import { say } from '../words/say.ts';
import { type Bench, type Row, seriesAtHand, type Taken } from './bench.ts';
import { BOXES, type BoxName } from './boxes.ts';

/** A row with its torque, and what was read there as far as it can be used. */
export interface RowView extends Row {
  readonly torque: number; // N·m; 0 where the band is slack
  readonly slack: 'start' | 'letOff' | undefined; // such a row is never one of the line
  readonly value: number | undefined; // m
  readonly refusal: string | undefined;
}

/** The dial now: its look, the one before it, and where it went back to after letting off. */
export interface DialView {
  readonly now: BenchLook;
  readonly before: BenchLook | undefined;
  readonly isReleased: boolean;
}

/** All that follows. */
export interface View {
  readonly bench: Bench;
  readonly mill: LevelMill;
  readonly face: Face;
  readonly series: Taken | undefined; // that is on
  readonly dial: DialView | undefined; // none until clamps were set
  readonly stress: number; // Pa, now
  readonly coil: number; // m, by which coil set bows the reading now
  readonly rows: readonly RowView[];
  readonly minutes: number;
}

/** The units that a mill's dial is made in. */
export const faceOf = ({ known }: Pick<LevelMill, 'known'>): Face =>
  known.dialTurn > 2e-3 ? 'inch' : 'metric';

/** The units in which the dial is read. */
export const dialUnits = (face: Face): UnitSystem => unitsOfFace(face);

const DIAL_TURNS = 10; // that the small hand counts

/** What was read off the dial, m, or why it cannot be used: that it is no number, or nothing that this dial can show. */
export function dialReading(text: string, face: Face): Reading {
  const read = parseQuantity(text, 'stretch', unitsOfFace(face));
  const turn = turnOf(face);
  if (!read.ok || (read.value >= 0 && read.value < DIAL_TURNS * turn)) return read;
  const [least, most] = [0, DIAL_TURNS * turn].map((end) => say(end, 'thickness', dialUnits(face)));
  const way = `This dial shows ${least} to ${most} only. Each turn on the small hand is ${say(turn, 'thickness', dialUnits(face))}; add the big hand.`;
  return refusal('tooLarge', way);
}

/** What stands in a box, in SI, or why it cannot be used. */
export const boxReading = ({ typed, system }: Bench, box: BoxName, face: Face): Reading =>
  box === 'reading'
    ? dialReading(typed.reading, face)
    : parseQuantity(typed[box], BOXES.kinds[box], system);

function rowView(row: Row, taken: readonly Taken[], face: Face): RowView {
  const torques = taken[row.series]?.torques ?? [];
  const torque = row.place === 0 ? 0 : (torques[row.place - 1] ?? 0);
  const slack = row.place === 0 ? 'start' : row.place > torques.length ? 'letOff' : undefined;
  const read = dialReading(row.dial, face);
  return read.ok
    ? { ...row, torque, slack, value: read.value, refusal: undefined }
    : { ...row, torque, slack, value: undefined, refusal: read.reason };
}

function dialView(last: Taken | undefined, found: BenchLooks | undefined): DialView | undefined {
  if (!last || !found) return undefined;
  const { looks, released } = found;
  const seen = last.isReleased ? [...looks, released] : looks;
  const now = seen.at(-1);
  return now && { now, before: seen.at(-2), isReleased: last.isReleased };
}

/** The highest torque that the series at hand has reached, N·m; 0 at the slack band. */
const reached = (bench: Bench): number => Math.max(0, ...(seriesAtHand(bench)?.torques ?? []));

/** What follows from a bench. */
export function viewOf(bench: Bench): View {
  const mill = benchMillAt(bench.seed, bench.level);
  const face = faceOf(mill);
  const last = bench.taken.at(-1);
  const stress = benchStress(mill, reached(bench));
  return {
    bench,
    mill,
    face,
    series: seriesAtHand(bench),
    dial: dialView(last, last && benchLooks(mill, last)),
    stress,
    coil: coilSetLeft(mill, stress),
    rows: bench.rows.map((row) => rowView(row, bench.taken, face)),
    minutes: bench.taken.reduce((sum, taken) => sum + minutesOf(taken, taken.torques.length), 0),
  };
}

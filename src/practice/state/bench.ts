/**
 * What a learner has done at the bench, and the commands that change it: there is no other way.
 * Units: N·m for torques; what is typed stays text, its bare numbers meant in `system`.
 * Source: definition.
 */
import { type BenchLevel, benchMillAt, type Handling, type TakenSeries } from '../../core/bench.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { BOXES, type BoxName, reworded } from './boxes.ts';

/** A series, and whether the band was let off after it. */
export interface Taken extends TakenSeries {
  readonly isReleased: boolean;
}

/** A row of the learner's own table: a look, and what was read there, in the dial's own unit. */
export interface Row {
  readonly series: number; // attempt, from 0
  readonly place: number; // of the look
  readonly dial: string;
}

/** The bench at one moment. */
export interface Bench {
  readonly seed: number;
  readonly level: BenchLevel;
  readonly system: UnitSystem;
  readonly next: Handling; // of the next series
  readonly taken: readonly Taken[];
  readonly rows: readonly Row[];
  readonly tries: readonly number[]; // torques at which the slack handle was tried
  readonly plucks: readonly Pick<Row, 'series' | 'place'>[];
  readonly isMeasured: boolean; // the band's section
  readonly isLifted: boolean; // the lid
  readonly typed: Readonly<Record<BoxName, string>>;
}

/** What can be done. */
export type Command =
  | { readonly do: 'type'; readonly box: BoxName; readonly text: string }
  | { readonly do: 'handle'; readonly how: Partial<Handling> }
  | { readonly do: 'turn' | 'try'; readonly torque: number }
  | { readonly do: 'clamp' | 'zero' | 'letOff' | 'pluck' | 'measure' | 'lift' | 'shut' }
  | { readonly do: 'write'; readonly dial: string }
  | { readonly do: 'correct'; readonly row: number; readonly dial: string }
  | { readonly do: 'remove'; readonly row: number }
  | { readonly do: 'units'; readonly system: UnitSystem };

/** The most that a bench holds: more than a day's work, and no kept text without end. */
export const MOST = { series: 40, torques: 60, rows: 400, tries: 200, plucks: 200 } as const;

const ROUNDED = 0.07; // N·m, by which a limit that is shown in tenths of a ft·lbf may be above itself

/** Whether the mill's maker allows a torque, which may be typed as the limit is shown. */
export const isAllowed = (torque: number, most: number): boolean =>
  torque > 0 && torque <= most + ROUNDED;

/** A bench with a mill on it, and nothing done. */
export const freshBench = (seed: number, level: BenchLevel, system: UnitSystem): Bench => ({
  seed,
  level,
  system,
  next: { clamps: 'quick', hands: 'bare' },
  taken: [],
  rows: [],
  tries: [],
  plucks: [],
  isMeasured: false,
  isLifted: false,
  typed: BOXES.empty,
});

/** The series that is on, if one is. */
export function seriesAtHand({ taken }: Pick<Bench, 'taken'>): Taken | undefined {
  const last = taken.at(-1);
  return last?.isReleased ? undefined : last;
}

/** Whether a row of the series that is on has been written: from then on the dial stays as it is set. */
export function isNoted({ taken, rows }: Pick<Bench, 'taken' | 'rows'>): boolean {
  return rows.some(({ series }) => series === taken.length - 1);
}

/** Whether the band hangs slack. */
export const isSlack = (bench: Bench): boolean => (seriesAtHand(bench)?.torques.length ?? 0) === 0;

const withLast = (bench: Bench, part: Partial<Taken>): Bench => ({
  ...bench,
  taken: bench.taken.map((series, at) =>
    at === bench.taken.length - 1 ? { ...series, ...part } : series,
  ),
});

function clamped(bench: Bench): Bench {
  if (seriesAtHand(bench) || bench.taken.length >= MOST.series) return bench;
  const series = { ...bench.next, attempt: bench.taken.length, torques: [], isReleased: false };
  return { ...bench, taken: [...bench.taken, series] };
}

function turned(bench: Bench, torque: number): Bench {
  const series = seriesAtHand(bench);
  const { mostTorque } = benchMillAt(bench.seed, bench.level).told;
  const isPossible = series && series.torques.length < MOST.torques;
  if (!isPossible || !isAllowed(torque, mostTorque)) return bench;
  return withLast(bench, { torques: [...series.torques, torque] });
}

/** What the series that is on allows. */
function atSeries(bench: Bench, what: 'zero' | 'letOff' | 'pluck'): Bench {
  const series = seriesAtHand(bench);
  if (!series) return bench;
  const place = series.torques.length;
  if (what === 'letOff') return withLast(bench, { isReleased: true });
  if (what === 'zero') return isNoted(bench) ? bench : withLast(bench, { zeroedAt: place });
  const isDone = place === 0 || bench.plucks.length >= MOST.plucks;
  return isDone
    ? bench
    : { ...bench, plucks: [...bench.plucks, { series: series.attempt, place }] };
}

/** The look that a row would be of now: of the series that is on, or of the band let off; none where that is written. */
export function lookAtHand({ taken, rows }: Pick<Bench, 'taken' | 'rows'>) {
  const last = taken.at(-1);
  if (!last) return undefined;
  const [series, place] = [last.attempt, last.torques.length + Number(last.isReleased)];
  const isWritten = rows.some((row) => row.series === series && row.place === place);
  return last.isReleased && isWritten ? undefined : { series, place };
}

function written(bench: Bench, dial: string): Bench {
  const look = lookAtHand(bench);
  if (!look || bench.rows.length >= MOST.rows) return bench;
  const row = { ...look, dial };
  return { ...bench, rows: [...bench.rows, row], typed: { ...bench.typed, reading: '' } };
}

function tried(bench: Bench, torque: number): Bench {
  const isPossible = isSlack(bench) && torque > 0 && bench.tries.length < MOST.tries;
  return isPossible ? { ...bench, tries: [...bench.tries, torque] } : bench;
}

/** The bench after a command; the same one where the command can change nothing. Never throws. */
export function apply(bench: Bench, command: Command): Bench {
  switch (command.do) {
    case 'type':
      return { ...bench, typed: { ...bench.typed, [command.box]: command.text } };
    case 'handle':
      return { ...bench, next: { ...bench.next, ...command.how } };
    case 'clamp':
      return clamped(bench);
    case 'turn':
      return turned(bench, command.torque);
    case 'try':
      return tried(bench, command.torque);
    case 'zero':
    case 'letOff':
    case 'pluck':
      return atSeries(bench, command.do);
    case 'measure':
      return { ...bench, isMeasured: true };
    case 'lift':
    case 'shut':
      return { ...bench, isLifted: command.do === 'lift' };
    case 'write':
      return written(bench, command.dial);
    case 'correct': {
      const rows = bench.rows.map((row, at) =>
        at === command.row ? { ...row, dial: command.dial } : row,
      );
      return { ...bench, rows };
    }
    case 'remove':
      return { ...bench, rows: bench.rows.filter((_, at) => at !== command.row) };
    case 'units':
      return {
        ...bench,
        system: command.system,
        typed: reworded(bench.typed, bench.system, command.system),
      };
  }
}

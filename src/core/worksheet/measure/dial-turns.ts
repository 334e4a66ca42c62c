/**
 * Whether a whole turn of the dial's hand was missed between two rows of the worksheet.
 * Units: SI only (m, N·m).
 * Source: common practice, no source: a step that is off the usual one by nearly a turn.
 */
import { isUsable } from '../known-inputs.ts';
import type { SeriesResult } from './readings.ts';

/** A row from which on the count of whole turns looks wrong, or a single one. */
export interface MissedTurn {
  readonly row: number; // place in worksheet.readings
  readonly turns: number; // to be added from there on, 1 or −1
  readonly isAlone: boolean; // the row behind it is right again
}

const nearly = 0.25; // of a turn

/** Rows whose step from the row before is off by nearly one turn; the usual step is the median per torque. */
export function missedTurns(
  { rows, series, torques, elongations }: SeriesResult,
  travelPerTurn: number | undefined,
): readonly MissedTurn[] {
  if (!isUsable(travelPerTurn)) return [];
  const steps = rows.slice(1).flatMap((row, i) => {
    const [from, to] = [torques[i] as number, torques[i + 1] as number];
    if (series[i] !== series[i + 1] || from === 0 || to === 0) return []; // slack, the dial moves as it will
    return [
      {
        row,
        torque: to - from,
        stretch: (elongations[i + 1] as number) - (elongations[i] as number),
      },
    ];
  });
  const rises = steps.filter(({ torque }) => torque > 0);
  const usual = median(rises.map(({ torque, stretch }) => stretch / torque));
  const judged = steps.filter(({ torque }) => torque >= 0); // a repeat too: there nothing should move
  const missed = judged.flatMap(({ row, torque, stretch }) => {
    const off = (stretch - usual * torque) / travelPerTurn;
    return Math.abs(Math.abs(off) - 1) < nearly ? [{ row, turns: off < 0 ? 1 : -1 }] : [];
  });
  return joined(missed, rows);
}

/** One row that is off and right again behind it is told once. */
function joined(
  missed: readonly Omit<MissedTurn, 'isAlone'>[],
  rows: readonly number[],
): readonly MissedTurn[] {
  const found: MissedTurn[] = [];
  for (const { row, turns } of missed) {
    const last = found.at(-1);
    const isNext = last && rows.indexOf(row) === rows.indexOf(last.row) + 1;
    if (last && isNext && !last.isAlone && last.turns === -turns)
      found[found.length - 1] = { ...last, isAlone: true };
    else found.push({ row, turns, isAlone: false });
  }
  return found;
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

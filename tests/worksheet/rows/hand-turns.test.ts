/** Turns of the hand that lack are told by where the hand passed zero, and written in one step. */
import { describe, expect, it } from 'vitest';
import { emptyWorksheet } from '../../../src/core/worksheet.ts';
import { rowNamer } from '../../../src/form/series.ts';
import {
  passesSaid,
  passesUntold,
  turnsButton,
  turnsLacking,
  turnsSaid,
  writeTurns,
} from '../../../src/worksheet/rows/hand-turns.ts';
import type { Command } from '../../../src/worksheet/state/project.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';

const { rig } = emptyWorksheet;
const shown = shownIn('metric');

/** A sheet of a dial that runs down, shares of a turn of 1 mm. */
const sheetOf = (dials: readonly number[], written: readonly number[] = []) => ({
  worksheet: () => ({
    ...emptyWorksheet,
    rig: { ...rig, dialRunsBackwards: true, travelPerTurn: 1e-3 },
    readings: dials.map((dial, row) => ({
      torque: 4 * (row + 1),
      dial: dial / 1000,
      wholeTurns: written[row],
      turns: undefined,
    })),
  }),
});

const ONCE = sheetOf([0.2, 0.05, 0.9, 0.75]);

describe('turns of the hand that lack', () => {
  it('are told by where the hand passed zero', () => {
    const lacking = turnsLacking(ONCE);
    expect(turnsSaid(lacking, shown)).toBe(
      'The hand seems to have passed zero just before row 3: the torque rose, but the dial jumped the wrong way by more than half a turn.',
    );
    expect(turnsButton(lacking, shown)).toBe('Fill in the turns in 2 rows');
  });

  it('are told as far as they can be without the travel of one turn', () => {
    const known = ONCE.worksheet();
    const untold = {
      worksheet: () => ({ ...known, rig: { ...known.rig, travelPerTurn: undefined } }),
    };
    expect(turnsLacking(untold)).toEqual([]);
    expect(passesUntold(ONCE)).toEqual([]);
    expect(passesSaid(passesUntold(untold), shownIn('us', 'pressure'))).toBe(
      'The hand may have passed zero just before row 3: the pressure rose, but the dial jumped the wrong way.',
    );
  });

  it('are told of several passes, and of rows by their series', () => {
    const lacking = turnsLacking(sheetOf([0.2, 0.8, 0.5, 0.2, 0.9]));
    expect(turnsSaid(lacking, shown)).toContain('just before row 2 and row 5: ');
    const series = rowNamer([{ row: 3, series: '2' }]);
    expect(turnsSaid(lacking, shownIn('us', 'pressure', series))).toContain(
      'just before row 2 of series 1 and row 2 of series 2: the pressure rose',
    );
  });

  it('are told of the rows behind a pass that is written', () => {
    const lacking = turnsLacking(sheetOf([0.2, 0.05, 0.9, 0.75], [0, 0, 1, 0]));
    expect(turnsSaid(lacking, shown)).toContain('counts in all rows after it passed zero');
    expect(turnsButton(lacking, shown)).toBe('Fill in the turns in row 4');
  });

  it('are written by one command, from the first such row on', () => {
    const run: Command[] = [];
    writeTurns({ run: (command) => run.push(command) }, turnsLacking(ONCE));
    expect(run).toEqual([
      {
        do: 'fill',
        path: 'readings.2.wholeTurns',
        texts: [
          ['readings.2.wholeTurns', '1'],
          ['readings.3.wholeTurns', '1'],
        ],
      },
    ]);
  });

  it('are none while nothing is known of the sheet', () =>
    expect(turnsLacking({ worksheet: () => undefined })).toEqual([]));
});

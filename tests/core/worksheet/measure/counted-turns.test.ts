import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import {
  countedTurns,
  passesWithoutTravel,
} from '../../../../src/core/worksheet/measure/counted-turns.ts';
import { emptyWorksheet, evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { millE, worksheetMills } from '../fixtures/mills.ts';

const TURN = 1e-3; // m

interface Hand {
  readonly backwards?: boolean | undefined;
  readonly torques?: readonly number[];
  readonly written?: readonly (number | undefined)[];
  readonly series?: readonly (number | undefined)[];
  readonly rig?: Partial<Worksheet['rig']>;
}

/** A sheet whose dial shows shares of a turn, at torques that rise by 3 N·m. */
function sheetOf(shown: readonly number[], hand: Hand = {}): Worksheet {
  const { torques = [], written = [], series = [], rig } = hand;
  const dialRunsBackwards = 'backwards' in hand ? hand.backwards : true;
  return {
    ...emptyWorksheet,
    rig: { ...emptyWorksheet.rig, dialRunsBackwards, travelPerTurn: TURN, ...rig },
    readings: shown.map((share, row) => ({
      torque: torques[row] ?? 3 * (row + 1),
      dial: share * TURN,
      wholeTurns: written[row],
      series: series[row],
      turns: undefined,
    })),
  };
}

/** `[row, turns]` of each row that lacks some; a third entry where the hand passed zero. */
const lacking = (shown: readonly number[], hand?: Hand) =>
  countedTurns(sheetOf(shown, hand)).map(({ row, turns, passes }) =>
    passes ? [row, turns, 'passes'] : [row, turns],
  );

const DOWN = [0.4, 0.25, 0.1, 0.95, 0.8, 0.65]; // passes between the third row and the fourth
const UP = DOWN.map((share) => 1 - share);
const FROM_THE_FOURTH = [
  [3, 1, 'passes'],
  [4, 1],
  [5, 1],
];

describe('the turns of the hand', () => {
  it('are counted from the pass on, whichever way the dial runs', () => {
    expect(lacking(DOWN)).toEqual(FROM_THE_FOURTH);
    expect(lacking(UP, { backwards: false })).toEqual(FROM_THE_FOURTH);
  });

  it('are not counted where a step back is half a turn, which may be no pass', () =>
    expect(lacking([0.25, 0.75, 0.5])).toEqual([]));

  it('are not looked for without the travel of a turn where only half of the steps go on', () => {
    const unsaid = { rig: { travelPerTurn: undefined } };
    expect(passesWithoutTravel(sheetOf([0.5, 0.25, 0.875], unsaid))).toEqual([]);
    expect(passesWithoutTravel(sheetOf([0.5, 0.25, 0.875, 0.75], unsaid))).toEqual([2]);
  });

  it('are counted over two passes, of which one may be written', () => {
    const twice = [0.3, 0.0, 0.7, 0.4, 0.1, 0.8];
    expect(lacking(twice)).toEqual([
      [2, 1, 'passes'],
      [3, 1],
      [4, 1],
      [5, 2, 'passes'],
    ]);
    const written = [undefined, undefined, 1, 1, 1, 1];
    expect(lacking(twice, { written })).toEqual([[5, 2, 'passes']]);
  });

  it('are counted in each series anew, from what its first row says', () => {
    const series = [undefined, undefined, undefined, 2, undefined, undefined, undefined];
    const torques = [3, 6, 9, 3, 6, 9, 12];
    const written = [0, 0, 0, 1, 1, 1, 1];
    const shown = [0.2, 0.9, 0.6, 0.5, 0.2, 0.9, 0.6];
    expect(lacking(shown, { series, torques, written })).toEqual([
      [1, 1, 'passes'],
      [2, 1],
      [5, 2, 'passes'],
      [6, 2],
    ]);
  });

  it('are completed where they stand only in the row of the pass', () =>
    expect(lacking(DOWN, { written: [0, 0, 0, 1, 0, 0] })).toEqual([
      [4, 1],
      [5, 1],
    ]));

  it.each<[string, readonly number[], Hand]>([
    ['while the direction is not said', DOWN, { backwards: undefined }],
    ['of a dial that runs the other way', DOWN, { backwards: false }],
    ['while the travel of a turn is not known', DOWN, { rig: { travelPerTurn: undefined } }],
    ['written together with the hand', DOWN, { rig: { dialWritten: 'together' } }],
    ['that are written as they are', DOWN, { written: [0, 0, 0, 1, 1, 1] }],
    ['of which more are written', DOWN, { written: [0, 0, 1, 1, 1, 1] }],
    ['where the torque did not rise at the jump', DOWN, { torques: [3, 6, 9, 9, 15, 18] }],
    ['where one reading alone is off', [0.9, 0.8, 0.7, 0.05, 0.5, 0.4], {}],
    ['where a jump is a turn or more', [0.4, 0.25, 0.1, 1.2, 1.05, 0.9], {}],
    ['at a step of half a turn', [0.4, 0.25, 0.1, 0.6, 0.45, 0.3], {}],
    ['from a slack band', [0.1, 0.9, 0.8, 0.7, 0.6, 0.5], { torques: [0, 3, 6, 9, 12, 15] }],
  ])('are not told %s', (_, shown, hand) => expect(lacking(shown, hand)).toEqual([]));

  it.each(Object.entries(worksheetMills))('lack nothing on mill %s', (_, mill) =>
    expect(countedTurns(mill)).toEqual([]),
  );

  it('give the stress that they give when they are written by hand', () => {
    const bare = millE.readings.map((reading) => ({ ...reading, wholeTurns: undefined }));
    const worksheet = { ...millE, readings: bare };
    const found = countedTurns(worksheet);
    expect(found).toEqual([{ row: 7, turns: 1, passes: true }]);
    const filled = bare.map((reading, row) => ({
      ...reading,
      wholeTurns: found.find((each) => each.row === row)?.turns,
    }));
    expect(evaluateWorksheet({ ...millE, readings: filled }).measured).toEqual(
      evaluateWorksheet(millE).measured,
    );
  });
});

describe('a pass of the hand without the travel of a turn', () => {
  const rig = { travelPerTurn: undefined };
  const passes = (shown: readonly number[], hand: Hand = {}) =>
    passesWithoutTravel(sheetOf(shown, { ...hand, rig }));

  it('is told by the row after it, whichever way the dial runs', () => {
    expect(passes(DOWN)).toEqual([3]);
    expect(passes(UP, { backwards: false })).toEqual([3]);
    expect(passes([0.3, 0.0, 0.7, 0.4, 0.1, 0.8, 0.5])).toEqual([2, 5]);
  });

  it('is not told where the travel is known, nor where nobody says which way the dial runs', () => {
    expect(passesWithoutTravel(sheetOf(DOWN))).toEqual([]);
    expect(passes(DOWN, { backwards: undefined })).toEqual([]);
  });

  it('is not told of a dial that goes on, runs the other way, or was read wrong once', () => {
    expect(passes([0.9, 0.7, 0.5, 0.3])).toEqual([]);
    expect(passes([0.9, 0.8, 0.1], { backwards: false })).toEqual([]);
    expect(passes([0.2, 0.3, 0.93, 0.5, 0.6], { backwards: false })).toEqual([]);
    expect(passes([])).toEqual([]);
  });
});

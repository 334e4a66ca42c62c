/** What is said under rows that are not used, and what the dial will show at the setting. */
import { describe, expect, it } from 'vitest';
import { evaluateWorksheet, type Worksheet } from '../../../src/core/worksheet.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { dialNotes } from '../../../src/worksheet/words/dial-words.ts';
import { rowNotes } from '../../../src/worksheet/words/row-words.ts';
import { rowReason } from '../../../src/worksheet/words/verdict-words.ts';
import { millA } from '../../core/worksheet/fixtures/mills.ts';

const { readings } = millA;
const shown = shownIn('metric');
const notesOf = (rows: Worksheet['readings']) =>
  rowNotes(evaluateWorksheet({ ...millA, readings: rows }), shown);
const withRow = (row: number, change: Partial<Worksheet['readings'][number]>) =>
  readings.map((reading, at) => (at === row ? { ...reading, ...change } : reading));

describe('the line under a row', () => {
  it('is not there where every row is used', () => expect(notesOf(readings)).toEqual({}));

  it('says that a row with no torque shows the slack band, and that too little only turns the screw', () => {
    expect(notesOf(withRow(0, { torque: 0 }))).toEqual({ 0: rowReason('noTorque', shown) });
    expect(notesOf(withRow(0, { torque: 0.01 }))).toEqual({ 0: rowReason('belowDrag', shown) });
  });

  it('is left to the reader’s own words where a row is struck out', () =>
    expect(notesOf(withRow(2, { struck: 'slipped' }))).toEqual({}));

  it('waits until a row behind it is used: a column is filled from the top', () => {
    const last = readings.length - 1;
    expect(notesOf(withRow(2, { dial: undefined }))).toEqual({ 2: rowReason('notUsable', shown) });
    expect(notesOf(withRow(last, { dial: undefined }))).toEqual({});
    expect(notesOf(readings.map((row) => ({ ...row, dial: undefined })))).toEqual({});
  });
});

describe('the sentence about the dial at the setting', () => {
  const fine = (dialWritten: Worksheet['rig']['dialWritten']): Worksheet => ({
    ...millA,
    rig: { ...millA.rig, travelPerTurn: 1e-4, dialWritten },
  });
  const saidOf = (worksheet: Worksheet) =>
    dialNotes(evaluateWorksheet(worksheet).dialSetting, shownIn('metric')).map((note) =>
      note.replaceAll('\u202f', ' '),
    );

  it('has whole turns apart, or the one number, as the readings are written', () => {
    const start = 'If bar and dial are still clamped as for these readings, the dial will show';
    expect(saidOf(fine('handOnly'))).toEqual([`${start} 0.003 mm with −3 in “turns of the hand”.`]);
    expect(saidOf(fine('together'))).toEqual([`${start} 0.303 mm.`]);
  });

  it('is one for each series', () => {
    const second = readings.map((row) => ({ ...row, dial: (row.dial ?? 0) - 5e-5, series: 2 }));
    const said = saidOf({ ...fine('together'), readings: [...readings, ...second] });
    expect(said.map((each) => /series \d/.exec(each)?.[0])).toEqual(['series 1', 'series 2']);
  });

  it('is not there without a target', () =>
    expect(saidOf({ ...millA, target: { ...millA.target, stress: undefined } })).toEqual([]));
});

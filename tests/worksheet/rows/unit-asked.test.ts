/** The unit of a column is asked about once, written in one step, and then behind each number that is typed below. */
import { type Signal, signal } from '@preact/signals-core';
import { describe, expect, it } from 'vitest';
import { readDocument } from '../../../src/form/schema.ts';
import { documentFrom } from '../../../src/worksheet/keeping/keeper.ts';
import {
  answerUnit,
  askedOn,
  carryUnit,
  noteTyping,
} from '../../../src/worksheet/rows/unit-asked.ts';
import { unitButton, unitQuestion } from '../../../src/worksheet/rows/unit-words.ts';
import { apply, emptyProject, type Project } from '../../../src/worksheet/state/project.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { type SheetView, viewOf } from '../../../src/worksheet/state/view.ts';

const path = (row: number) => `readings.${row}.torque` as const;

const viewOn = (project: Signal<Project>) =>
  viewOf({
    project,
    run: (command) => {
      project.value = apply(project.value, command);
    },
  });

function sheetOf(torques: readonly string[], project = signal(emptyProject('us'))) {
  const sheet = viewOn(project);
  for (const [row, text] of torques.entries()) type(sheet, row, text);
  return sheet;
}

const type = ({ run }: SheetView, row: number, text: string) =>
  run({ do: 'type', path: path(row), text });
const torquesOf = ({ rows, text }: SheetView) =>
  Array.from({ length: rows('readings') }, (_, row) => text(path(row)));

describe('a column whose numbers have no unit below one that has', () => {
  it('gets the unit that is answered, and later numbers get it without another question', () => {
    const sheet = sheetOf(['40 in-lb', '60', ' 80 ', '0']);
    const asked = askedOn(sheet);
    if (!asked) return expect.fail();
    answerUnit(sheet, asked, asked.unit);
    expect(torquesOf(sheet)).toEqual(['40 in-lb', '60 in-lb', '80 in-lb', '0']);
    type(sheet, 4, '100');
    expect(askedOn(sheet)?.rows).toEqual([4]);
    carryUnit(sheet, path(4));
    expect(torquesOf(sheet)[4]).toBe('100 in-lb');
    expect(askedOn(sheet)).toBeUndefined();
  });

  it('gets it when the sheet was kept and is opened again', () => {
    const project = signal(emptyProject('us'));
    const sheet = sheetOf(['40 in-lb', '60'], project);
    const asked = askedOn(sheet);
    if (!asked) return expect.fail();
    answerUnit(sheet, asked, asked.unit);
    const kept: unknown = JSON.parse(JSON.stringify(documentFrom(project.value)));
    const read = readDocument(kept);
    if (typeof read === 'string') return expect.fail(read);
    expect(sheet.text('unitsBelow')).toBe('torque in-lb');
    const again = sheetOf([]);
    again.run({ do: 'load', document: read.document });
    type(again, 2, '80');
    carryUnit(again, path(2));
    expect(torquesOf(again)).toEqual(['40 in-lb', '60 in-lb', '80 in-lb']);
  });

  it('keeps one answer for each column, the last', () => {
    const sheet = sheetOf(['40 in-lb', '60']);
    sheet.run({ do: 'type', path: 'readings.0.dial', text: '0.5 mm' });
    sheet.run({ do: 'type', path: 'readings.1.dial', text: '0.4' });
    for (const unit of ['in-lb', 'in']) {
      const asked = askedOn(sheet);
      if (!asked) return expect.fail();
      answerUnit(sheet, asked, unit);
    }
    expect(sheet.text('unitsBelow')).toBe('torque in-lb; stretch in');
    type(sheet, 2, '80 N·m');
    type(sheet, 3, '90');
    const asked = askedOn(sheet);
    if (!asked) return expect.fail();
    answerUnit(sheet, asked, 'N·m');
    expect(sheet.text('unitsBelow')).toBe('stretch in; torque N·m');
  });

  it('gets nothing written before it is answered, nor behind a number that was not typed', () => {
    const sheet = sheetOf(['15 N·m', '20', '25']);
    carryUnit(sheet, path(1));
    expect(torquesOf(sheet)).toEqual(['15 N·m', '20', '25']);
    const asked = askedOn(sheet);
    if (!asked) return expect.fail();
    answerUnit(sheet, asked, 'ft·lbf');
    expect(torquesOf(sheet)).toEqual(['15 N·m', '20 ft·lbf', '25 ft·lbf']);
    type(sheet, 3, '30');
    carryUnit(sheet, path(3));
    expect(torquesOf(sheet)[3]).toBe('30');
    expect(askedOn(sheet)).toBeUndefined();
  });

  it('is not asked about a box that is being typed in', () => {
    const sheet = sheetOf(['15 N·m', '2']);
    noteTyping(sheet, path(1));
    expect(askedOn(sheet)).toBeUndefined();
    noteTyping(sheet, undefined);
    expect(askedOn(sheet)?.rows).toEqual([1]);
  });

  it('is asked about below the torque in use too', () => {
    const sheet = sheetOf(['60', '80']);
    sheet.run({ do: 'type', path: 'use.torque', text: '180 in-lb' });
    const asked = askedOn(sheet);
    if (!asked) return expect.fail();
    expect(unitQuestion(asked, '60', shownIn('us'))).toBe(
      'You wrote in-lb in “The torque you tighten to now” and no unit in 2 rows. Until you say, 60 counts as 60 ft·lbf.',
    );
    answerUnit(sheet, asked, asked.unit);
    expect(torquesOf(sheet)).toEqual(['60 in-lb', '80 in-lb']);
    expect(askedOn(sheet)).toBeUndefined();
  });

  it('is asked about with both units, and says what counts meanwhile', () => {
    const [one, two] = [
      askedOn(sheetOf(['15 N·m', '20'])),
      askedOn(sheetOf(['15 N·m', '20', '25'])),
    ];
    if (!one || !two) return expect.fail();
    expect(unitQuestion(one, '20', shownIn('us'))).toBe(
      'You wrote N·m in row 1 and no unit in row 2. Until you say, 20 counts as 20 ft·lbf.',
    );
    expect(unitQuestion(two, '20', shownIn('us'))).toContain('no unit in 2 rows.');
    expect(unitButton('N·m', '20', 1)).toBe('It is 20 N·m');
    expect(unitButton('N·m', '20', 2)).toBe('They are N·m: write 20 N·m');
  });
});

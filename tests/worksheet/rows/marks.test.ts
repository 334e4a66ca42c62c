/** Dial readings in marks are found, also where a box refuses them, and written as lengths in one step. */
import { describe, expect, it } from 'vitest';
import { emptyWorksheet } from '../../../src/core/worksheet.ts';
import type { FieldPath } from '../../../src/form/paths.ts';
import { cellsIn, typedAt } from '../../../src/form/typed.ts';
import type { UnitSystem } from '../../../src/units/kinds.ts';
import { toSi } from '../../../src/units/si-value.ts';
import {
  marksOn,
  thousandthsOn,
  writeLengths,
  writeThousandths,
} from '../../../src/worksheet/rows/marks.ts';
import { marksButton, marksQuestion } from '../../../src/worksheet/rows/marks-words.ts';
import { apply, emptyProject, type Project } from '../../../src/worksheet/state/project.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';

const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

/** What the boxes of dials refuse: an inch and more without a unit. */
const refusedBeyond = ({ typed }: Project, dials: readonly string[]) =>
  Object.fromEntries(
    dials.flatMap((_, row) => {
      const path = `readings.${row}.dial` as const;
      return Number(typedAt(typed, path)) > 2 ? [[path, 'too far']] : [];
    }),
  );

function sheetOf(dials: readonly string[], system: UnitSystem, graduation: number) {
  let project: Project = dials.reduce(
    (before, text, row) =>
      apply(before, { do: 'type', path: `readings.${row}.dial` as FieldPath, text }),
    emptyProject(system),
  );
  const { rig } = emptyWorksheet;
  return {
    cells: () => cellsIn(project.typed, 'readings'),
    shown: () => shownIn(system),
    worksheet: () => ({ ...emptyWorksheet, rig: { ...rig, graduation } }),
    troubles: () => ({ refusals: refusedBeyond(project, dials), doubts: {} }),
    run: (command: Parameters<typeof apply>[1]) => {
      project = apply(project, command);
    },
    dials: () => dials.map((_, row) => typedAt(project.typed, `readings.${row}.dial`)),
  };
}

describe('readings in marks', () => {
  it.each([
    ['metric', ['20', '9', '', '5', '2', '95'], 1e-5, ['0.2', '0.09', '', '0.05', '0.02', '0.95']],
    [
      'us',
      ['15', '12', '0', '−3'],
      toSi(0.0005, 'stretch', 'us'),
      ['0.0075', '0.006', '0', '-0.0015'],
    ],
  ] as const)('become lengths: %s, %j', (system, dials, graduation, lengths) => {
    const sheet = sheetOf(dials, system, graduation);
    writeLengths(sheet, marksOn(sheet));
    expect(sheet.dials()).toEqual(lengths);
    expect(marksOn(sheet)).toEqual([]);
  });

  it.each([
    [['0.2', '9', '5', '2']],
    [['20 mm', '9', '5', '2']],
    [['0', '0', '1', '1']],
    [['20', '9']],
  ])('are not found in %j', (dials) => expect(marksOn(sheetOf(dials, 'metric', 1e-5))).toEqual([]));

  it('are asked about with the dial’s own mark and the first reading', () => {
    expect(plain(marksQuestion(1e-5, shownIn('metric')))).toBe(
      'Are these marks or mm? All are whole numbers, and a mark of your dial is 0.01 mm.',
    );
    expect(plain(marksButton({ row: 0, count: 15, length: '0.0075' }, shownIn('us')))).toBe(
      'They are marks: write 0.0075 in for 15',
    );
  });
});

describe('readings in thousandths', () => {
  const at = (dials: readonly string[], system: UnitSystem = 'us') =>
    sheetOf(dials, system, toSi(0.0005, 'stretch', 'us'));

  it('get their unit in one step, but for those that have it', () => {
    const sheet = at(['12.0', '14.25 thou', '', '1.5']);
    writeThousandths(sheet, thousandthsOn(sheet));
    expect(sheet.dials()).toEqual(['12.0 thou', '14.25 thou', '', '1.5 thou']);
    expect(thousandthsOn(sheet)).toEqual([]);
  });

  it.each([
    ['where all may be inches', ['0.012', '1.5']],
    ['beside another unit', ['12.0', '0.3 mm']],
  ])('are not asked about %s', (_, dials) => expect(thousandthsOn(at(dials))).toEqual([]));

  it('are nothing where lengths are metric', () =>
    expect(thousandthsOn(at(['12.0'], 'metric'))).toEqual([]));
});

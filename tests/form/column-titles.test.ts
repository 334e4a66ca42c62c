/** Which columns a paste goes to: as its titles say, with their units, or one after the other. */
import { describe, expect, it } from 'vitest';
import { placedColumns } from '../../src/form/column-titles.ts';
import { pastedTable } from '../../src/form/pasted-table.ts';
import { leftOut, placedTexts } from '../../src/form/pasting.ts';
import { blank, typedFrom, withTexts } from '../../src/form/typed.ts';

const placed = (text: string) => placedColumns('readings', 'torque', pastedTable(text));

describe('a line of titles', () => {
  it('names columns in any order, and gives bare numbers their unit', () => {
    const text = 'Dial (in)\tTurns of screw\tTorque ft·lb\n.0185\t1/12\t3\n0.47 mm\t\t4';
    expect(placed(text)).toEqual({
      columns: ['dial', 'turns', 'torque'],
      rows: [
        ['.0185 in', '1/12', '3 ft·lb'],
        ['0.47 mm', '', '4 ft·lb'],
      ],
      areTitled: true,
    });
  });

  it('leaves what stands in columns that it does not name', () => {
    const before = typedFrom([['readings.0.turns', '0.5']]);
    expect(
      withTexts(before, placedTexts('readings.0.dial', pastedTable('dial,torque\n0.47,3'))),
    ).toEqual({
      'readings.0.turns': '0.5',
      'readings.0.dial': '0.47',
      'readings.0.torque': '3',
    });
  });

  it('names series and strikes too', () => {
    const rows = pastedTable('Run\tDial, mm\tTorque (N·m)\tNote\n1\t0.4\t3\t\n2\t0.5\t6\tslipped');
    expect(withTexts(blank, placedTexts('readings.0.torque', rows))).toEqual({
      'readings.0.series': '1',
      'readings.0.dial': '0.4 mm',
      'readings.0.torque': '3 N·m',
      'readings.1.series': '2',
      'readings.1.dial': '0.5 mm',
      'readings.1.torque': '6 N·m',
      'readings.1.struck': 'slipped',
    });
  });

  it('may name nothing here: that column is left out, and said', () => {
    const rows = pastedTable('Torque\tWeather\tDial\n3\train\t0.4');
    expect(withTexts(blank, placedTexts('readings.2.dial', rows))).toEqual({
      'readings.2.torque': '3',
      'readings.2.dial': '0.4',
    });
    expect(leftOut('readings.2.dial', rows)?.text).toBe('rain');
  });

  it.each(['1.5\t0.47\n3\t0.48', '1.5', 'torque\tdial', 'torque\t5\n7\t8'])(
    'is not seen in %j',
    (text) => expect(placed(text).areTitled).toBe(false),
  );
});

describe('the columns of a paste without titles', () => {
  it('follow one after the other; series and strikes only where they begin there', () => {
    const columnsFrom = (cell: string) => placedColumns('readings', cell, [['1', '2']]).columns;
    expect(columnsFrom('dial')).toEqual(['dial', 'wholeTurns', 'turns']);
    expect(columnsFrom('series')).toEqual(['series']);
  });
});

/** A list as a table for other programs comes back as it went out. */
import { describe, expect, it } from 'vitest';
import { placedColumns } from '../../../src/form/column-titles.ts';
import { pastedTable } from '../../../src/form/pasted-table.ts';
import { csvOf } from '../../../src/worksheet/io/csv.ts';

const readings = [
  ['1.5', '0.470', '0', '1/12'],
  ['11 in·lb', '-0.02', '', ''],
];

describe('a table for other programs', () => {
  it('has titles with units', () =>
    expect(csvOf('readings', [], 'us').split('\n')[0]).toMatch(
      /^Torque \(ft·lbf\),Dial \(in\),Whole turns of the hand,Turns of the screw/,
    ));

  it.each(['metric', 'us'] as const)(
    'comes back with the units that were meant in %s',
    (system) => {
      const { rows } = placedColumns(
        'readings',
        'torque',
        pastedTable(csvOf('readings', readings, system)),
      );
      const [torque, dial] = system === 'us' ? ['ft·lbf', 'in'] : ['N·m', 'mm'];
      expect(rows.map((row) => row.slice(0, 4))).toEqual([
        [`1.5 ${torque}`, `0.470 ${dial}`, '0', '1/12 turns'],
        ['11 in·lb', `-0.02 ${dial}`, '', ''],
      ]);
    },
  );

  it('runs nothing in another program, and keeps signs of numbers', () =>
    expect(csvOf('log', [['=1+1', '-5', '', '@seen, "dry"']], 'metric').split('\n')[1]).toBe(
      `'=1+1,-5,,"'@seen, ""dry"""`,
    ));
});

/** Tables as spreadsheets and gauges put them on the clipboard. */
import { describe, expect, it } from 'vitest';
import { pastedTable } from '../../src/form/pasted-table.ts';

describe('a pasted table', () => {
  it.each([
    [
      'of a spreadsheet',
      '1.5\t0.02\r\n3\t0,14\r\n',
      [
        ['1.5', '0.02'],
        ['3', '0,14'],
      ],
    ],
    ['of one column', '1.5\n3\n', [['1.5'], ['3']]],
    ['of one row', '1.5\t0.02', [['1.5', '0.02']]],
    [
      'with semicolons',
      ' 1,5 ; 0,02\n3;0,14',
      [
        ['1,5', '0,02'],
        ['3', '0,14'],
      ],
    ],
    [
      'with an empty cell',
      '1.5\t\n\t0.14',
      [
        ['1.5', ''],
        ['', '0.14'],
      ],
    ],
    ['with several empty lines at its end', '1.5\t2\n\n\n', [['1.5', '2']]],
    [
      'with inches in quotes',
      '"3/8"""\t0.02\n1/2"\t0.03',
      [
        ['3/8"', '0.02'],
        ['1/2"', '0.03'],
      ],
    ],
    [
      'with commas between cells and points in numbers',
      '1.5,0.47\n3,0.48',
      [
        ['1.5', '0.47'],
        ['3', '0.48'],
      ],
    ],
    [
      'with commas between cells and in numbers',
      '1,5, 0,47\n3,0, 0,48',
      [
        ['1,5', '0,47'],
        ['3,0', '0,48'],
      ],
    ],
    [
      'with commas in numbers and between them, without a space',
      '1,5,0,47\n3,0,0,48',
      [
        ['1,5', '0,47'],
        ['3,0', '0,48'],
      ],
    ],
    ['of one column with commas in its numbers', '1,5\n3,0', [['1,5'], ['3,0']]],
    [
      'typed with spaces and units',
      '1.5 N·m 0.470 mm\n3 N·m   0.475 mm\n1 3/8 in 2',
      [
        ['1.5 N·m', '0.470 mm'],
        ['3 N·m', '0.475 mm'],
        ['1 3/8 in', '2'],
      ],
    ],
    [
      'typed with commas in its numbers and spaces between them',
      '1,5 0,470\n3,0 0,475',
      [
        ['1,5', '0,470'],
        ['3,0', '0,475'],
      ],
    ],
    [
      'with titles of one word each',
      'torque dial\n1 2',
      [
        ['torque', 'dial'],
        ['1', '2'],
      ],
    ],
    ['with a line break within a cell', '"1.5\nabout"\t2', [['1.5\nabout', '2']]],
  ])('%s becomes rows of cells', (_, text, rows) => expect(pastedTable(text)).toEqual(rows));

  it('cuts nothing', () => expect(pastedTable(`${'9'.repeat(300)}\t1`)[0]?.[0]).toHaveLength(300));
});

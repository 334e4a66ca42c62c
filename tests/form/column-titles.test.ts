/** Pasted readings under a line of titles find their columns and units; without one they go in as they stand. */
import { describe, expect, it } from 'vitest';
import { inListOrder, titled } from '../../src/form/column-titles.ts';
import { pastedTable } from '../../src/form/pasted-table.ts';

const under = (text: string) => titled('readings', pastedTable(text));

describe('a line of titles', () => {
  it('names columns in any order, and gives bare numbers their unit', () => {
    const found = under('Dial (in)\tTurns of screw\tTorque ft·lb\n.0185\t1/12\t3\n0.47 mm\t\t4');
    expect(found).toEqual({
      columns: ['dial', 'turns', 'torque'],
      rows: [
        ['.0185 in', '1/12', '3 ft·lb'],
        ['0.47 mm', '', '4 ft·lb'],
      ],
    });
  });

  it('leaves what stands in columns that it does not name', () => {
    const found = under('dial,torque\n0.47,3\n0.48,4');
    if (!found) throw new Error('must be titles');
    const before = [['9', '9', '1', '0.5']];
    expect(inListOrder('readings', found, before).map((row) => row.slice(0, 4))).toEqual([
      ['3', '0.47', '1', '0.5'],
      ['4', '0.48', '', ''],
    ]);
  });

  it('may have titles that name nothing here', () =>
    expect(under('weather;torque\nrain;3')?.columns).toEqual([undefined, 'torque']));

  it.each(['1.5\t0.47\n3\t0.48', '1.5', 'torque\tdial'])('is not seen in %j', (text) =>
    expect(under(text)).toBeUndefined(),
  );
});

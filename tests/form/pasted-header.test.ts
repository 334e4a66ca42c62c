/** Which columns a paste goes to. */
import { describe, expect, it } from 'vitest';
import { placedColumns } from '../../src/form/pasted-header.ts';
import { pastedTable } from '../../src/form/pasted-table.ts';
import { leftOut, withPasted } from '../../src/form/pasting.ts';
import { blank } from '../../src/form/typed.ts';

describe('the columns of a paste', () => {
  it('are those that the first row names, in whatever order', () => {
    const text = 'Run\tDial, mm\tTorque (N·m)\tWhole turns of the hand\n1\t0.4\t3\t0\n2\t0.5\t6\t1';
    expect(withPasted(blank, 'readings.0.torque', pastedTable(text))).toEqual({
      'readings.0.series': '1',
      'readings.0.dial': '0.4',
      'readings.0.torque': '3',
      'readings.0.wholeTurns': '0',
      'readings.1.series': '2',
      'readings.1.dial': '0.5',
      'readings.1.torque': '6',
      'readings.1.wholeTurns': '1',
    });
  });

  it('leave out a column that is called something else, and say so', () => {
    const rows = pastedTable('Torque\tWeather\tDial\n3\train\t0.4');
    expect(withPasted(blank, 'readings.2.dial', rows)).toEqual({
      'readings.2.torque': '3',
      'readings.2.dial': '0.4',
    });
    expect(leftOut('readings.2.dial', rows)?.text).toBe('rain');
  });

  it('follow one after the other without such a row; series and strikes only where they begin there', () => {
    expect(placedColumns('readings', 'dial', [['1', '2']]).columns).toEqual([
      'dial',
      'wholeTurns',
      'turns',
    ]);
    expect(placedColumns('readings', 'series', [['1']]).columns).toEqual(['series']);
    const one = [
      ['torque', '5'],
      ['7', '8'],
    ];
    expect(placedColumns('readings', 'torque', one).rows).toEqual(one);
  });

  it('of other lists have no names', () =>
    expect(placedColumns('ways.0.readings', 'dial', [['dial', 'torque']])).toEqual({
      columns: ['dial', 'wholeTurns'],
      rows: [['dial', 'torque']],
    }));
});

/** Numbers without a unit under one that names its own: which are asked about, and which are not. */
import { describe, expect, it } from 'vitest';
import { unitAsked } from '../../../src/worksheet/rows/column-units.ts';

const torques = (...texts: readonly string[]) => unitAsked(texts, 'torque', 'us');

describe('the unit of a column', () => {
  it.each([
    [['15 N·m', '20', '25'], { from: 0, unit: 'N·m', rows: [1, 2] }],
    [['40 in-lb', '', '60'], { from: 0, unit: 'in-lb', rows: [2] }],
    [['10', '15 N·m', '20 Nm', '25'], { from: 2, unit: 'Nm', rows: [3] }],
    [['15 N·m', '0', '1/2', 'lunch', '2,5'], { from: 0, unit: 'N·m', rows: [2, 4] }],
  ])('is asked about below a row that names another: %j', (texts, asked) =>
    expect(torques(...texts)).toEqual(asked),
  );

  it('is asked about for one unit after the other', () =>
    expect(torques('15 N·m', '20', '100 in-lb', '120')).toEqual({
      from: 0,
      unit: 'N·m',
      rows: [1],
    }));

  it.each([
    [['10', '20', '30 N·m']],
    [['15 N·m', '20 N·m']],
    [['15 N·m', '20 ft-lb', '25']],
    [['15 ft·lbf', '20']],
    [['15 mm', '20']],
    [['15 N·m', '0', '']],
    [[]],
  ])('is not asked about in %j', (texts) => expect(torques(...texts)).toBeUndefined());

  it('is that of the reader’s system for each kind', () => {
    expect(unitAsked(['15 N·m', '20'], 'torque', 'metric')).toBeUndefined();
    expect(unitAsked(['0.31 mm', '.35'], 'stretch', 'us')?.rows).toEqual([1]);
    expect(unitAsked(['900 psi', '950'], 'pressure', 'metric')?.rows).toEqual([1]);
  });
});

import { describe, expect, it } from 'vitest';
import { screwTakesItsCut } from '../../../../src/lessons/screw-takes-its-cut/model.ts';
import { fieldClass } from '../../../../src/lessons/screw-takes-its-cut/table/field.ts';
import {
  cellQuantity,
  cellText,
  cellValue,
  reachedColumns,
  tableEdges,
} from '../../../../src/lessons/screw-takes-its-cut/table/thrust-cells.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../../src/models/define-model.ts';
import { fromSi } from '../../../../src/units/si-value.ts';

const at = (inputs: Partial<InputsOf<typeof screwTakesItsCut>> = {}) =>
  evaluated(screwTakesItsCut, inputsAt(screwTakesItsCut, inputs, 'metric'));

describe('the edges of the table', () => {
  it('hold the reader’s own torque and efficiency in place of the nearest', () => {
    const values = at();
    const { torques, efficiencies } = tableEdges(values, 'metric');
    expect(torques).toContain(values.torque);
    expect(efficiencies).toContain(values.efficiency);
    expect(efficiencies).not.toContain(0.2);
  });
  it.each(['metric', 'us'] as const)('keep rising and keep their number in %s', (system) => {
    for (const torque of [2, 11, 41, 80]) {
      for (const threadFriction of [0, 0.1, 0.3]) {
        const { torques, efficiencies } = tableEdges(at({ torque, threadFriction }), system);
        for (const list of [torques, efficiencies]) {
          expect([...list].sort((a, b) => a - b)).toEqual(list);
          expect(new Set(list).size).toBe(list.length);
        }
        expect(torques.length).toBe(9);
      }
    }
  });
  it('are round in US units too', () => {
    const { torques } = tableEdges(at({ torque: 80 }), 'us');
    expect(Math.round(fromSi(torques[0] ?? 0, 'torque', 'us') * 1e6) / 1e6).toBe(4);
  });
});

describe('the columns that the doubt reaches', () => {
  it('are those that the range allows, also at the ends of the table', () => {
    const columns = [0.1, 0.15, 0.21, 0.25, 0.3];
    const reached = (efficiencyLow: number, efficiencyHigh: number) =>
      reachedColumns(columns, { efficiencyLow, efficiencyHigh });
    expect(reached(0.17, 0.28)).toEqual({ least: 0.21, most: 0.25 });
    expect(reached(0.15, 0.25)).toEqual({ least: 0.15, most: 0.25 });
    expect(reached(0.05, 0.4)).toEqual({ least: 0.1, most: 0.3 });
  });
});

describe('the cells', () => {
  it('say 9.2 kN at the worked mill’s own torque and efficiency (`derived`)', () => {
    const values = at({ torque: 41.3664855 });
    const quantity = cellQuantity(values, 'metric');
    const value = cellValue(values, quantity, 41.3664855, values.efficiency);
    expect([cellText(value, quantity, 'metric'), quantity.unit]).toEqual(['9.2', 'kN']);
  });
  it('double with the efficiency along a row', () => {
    const values = at();
    const quantity = cellQuantity(values, 'metric');
    const [one, two] = [0.2, 0.4].map((share) => cellValue(values, quantity, 40, share));
    expect(two).toBeCloseTo(2 * (one ?? 0), 6);
  });
  it('say stress when asked, in thousands of psi to readers of US units', () => {
    const values = at({ torque: 41.3664855, shown: 'stress' });
    const quantity = cellQuantity(values, 'us');
    const value = cellValue(values, quantity, 41.3664855, values.efficiency);
    expect([cellText(value, quantity, 'us'), quantity.unit]).toEqual(['17', '1000 psi']);
  });
});

describe('the steps of the colour', () => {
  it('go from the first to the eighth, evenly, and stop there', () => {
    expect([-1, 0, 1.2, 6.9, 7, 8, 9].map((value) => fieldClass(value, 0, 8))).toEqual([
      'field-1',
      'field-1',
      'field-2',
      'field-7',
      'field-8',
      'field-8',
      'field-8',
    ]);
  });
});

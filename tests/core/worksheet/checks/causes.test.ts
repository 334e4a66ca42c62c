import { describe, expect, it } from 'vitest';
import type { Cause } from '../../../../src/core/worksheet/checks/causes.ts';
import { worksheetChecks } from '../../../../src/core/worksheet/checks/causes.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millD } from '../fixtures/hydraulic-mill.ts';
import { millA, millB, millF } from '../fixtures/mills.ts';
import { stretched } from '../fixtures/stretched.ts';

const checksOf = (worksheet: Worksheet) => worksheetChecks(worksheet, evaluateWorksheet(worksheet));
const causesOf = (worksheet: Worksheet): readonly Cause[] => {
  const { causes } = checksOf(worksheet);
  if (!causes) throw new Error('nothing calls for a check');
  return causes.causes;
};
const namesOf = (worksheet: Worksheet) => causesOf(worksheet).map(({ name }) => name);
const valuesOf = (worksheet: Worksheet, name: Cause['name']) =>
  causesOf(worksheet).find((cause) => cause.name === name)?.values;
const tensioner = (worksheet: Worksheet, change: Partial<Worksheet['tensioner']>): Worksheet => ({
  ...worksheet,
  tensioner: { ...worksheet.tensioner, ...change },
});
const withRod = (worksheet: Worksheet, rodDiameter: number) =>
  tensioner(worksheet, { cylinder: { ...worksheet.tensioner.cylinder, rodDiameter } });

describe('worksheetChecks', () => {
  it('finds nothing to check where theory and measurement agree', () => {
    expect(checksOf(millA)).toEqual({ remarks: [] });
    expect(checksOf(millD)).toEqual({ remarks: [] });
    expect(checksOf({ ...stretched(millD, 0.5), readings: [] }).causes).toBeUndefined();
  });

  it('tells the ratio that is to be explained, measured over predicted', () => {
    const apart = stretched(millD, 0.5);
    const { measured, predicted } = numbersOf(evaluateWorksheet(apart).agreement).operands;
    expect(checksOf(apart).causes?.ratio).toBeCloseTo(measured / predicted, 12);
  });

  it('puts the strands first at a ratio of 2, with what else is a factor of 2', () => {
    expect(namesOf(stretched(millB, 2)).slice(0, 2)).toEqual(['strands', 'graduation']);
    expect(valuesOf(stretched(millB, 2), 'strands')).toEqual({ factor: 2 });
    expect(namesOf(stretched(millD, 2)).slice(0, 3)).toEqual([
      'strands',
      'twoCylinders',
      'graduation',
    ]);
  });

  it('puts the units first at 25.4 and at 14.5', () => {
    expect(namesOf(stretched(millD, 1 / 25.4))[0]).toBe('lengthUnit');
    expect(namesOf(stretched(millD, 1 / 14.5))[0]).toBe('pressureUnit');
    expect(valuesOf(stretched(millD, 1 / 25.4), 'lengthUnit')?.['factor']).toBeCloseTo(25.4, 9);
  });

  it('puts the rod first at (D² − d²)/D², and the other way round where a rod was typed', () => {
    expect(namesOf(stretched(millD, 0.64))[0]).toBe('rodSide');
    const counted = withRod(millD, 0.6 * (millD.tensioner.cylinder.pistonDiameter ?? 0));
    expect(namesOf(counted)[0]).toBe('noRodSide');
    expect(valuesOf(counted, 'noRodSide')?.['factor']).toBeCloseTo(1 / 0.64, 9);
  });

  it('tells a slip only where its factor fits within the doubt of the two', () => {
    expect(namesOf(stretched(millD, 1 / 3))).toEqual([
      ...['sticking', 'piston', 'gauge', 'clamps', 'gaugeLength', 'lever'],
    ]);
  });

  it('has checks of its own for a screw: its friction only where friction would explain it', () => {
    const half = namesOf(stretched(millA, 0.4));
    expect(half).toEqual(expect.arrayContaining(['moreFriction', 'wrench', 'clamps']));
    expect(half.filter((name) => name === 'piston' || name === 'gauge')).toEqual([]);
    expect(namesOf(stretched(millB, 2))).toContain('lessFriction');
    expect(namesOf(stretched(millB, 2))).not.toContain('clamps');
    expect(namesOf(stretched(millB, 1 / 3))).not.toContain('moreFriction');
    expect(evaluateWorksheet(stretched(millF, 3)).efficiency.ready).toBe(false);
    expect(namesOf(stretched(millF, 3))).not.toContain('lessFriction');
  });

  it.each([0.6, 3])('says what bore, gauge length, lever would make them agree: %s', (factor) => {
    const apart = withRod(stretched(millD, factor), 0.01);
    const { ratio = Number.NaN } = checksOf(apart).causes ?? {};
    const agreeing = (worksheet: Worksheet) => {
      const { measured, predicted } = evaluateWorksheet(worksheet);
      return numbersOf(measured).stress / numbersOf(predicted).stress;
    };
    expect(agreeing(apart)).toBeCloseTo(ratio, 12);
    const { measured, predicted } = evaluateWorksheet(apart);
    const doubt = Math.hypot(
      numbersOf(measured).standardUncertainty / numbersOf(measured).stress,
      numbersOf(predicted).standardUncertainty / numbersOf(predicted).stress,
    );
    const explains = (name: Cause['name'], change: (value: number) => Worksheet) => {
      const { low = 0, high = 0 } = valuesOf(apart, name) ?? {};
      const ends = [low, high].map((end) => Math.log(agreeing(change(end))));
      expect(ends[0]).toBeCloseTo(2 * doubt, 2); // what a zero is worth hangs on the gauge length a little
      expect(ends[1]).toBeCloseTo(-2 * doubt, 2);
    };
    explains('piston', (pistonDiameter) =>
      tensioner(apart, { cylinder: { ...apart.tensioner.cylinder, pistonDiameter } }),
    );
    explains('lever', (advantage) => tensioner(apart, { advantage }));
    explains('gaugeLength', (gaugeLength) => ({ ...apart, rig: { ...apart.rig, gaugeLength } }));
  });

  it('asks after the thickness only where it is not far off', () => {
    const near = stretched(millD, 0.8);
    expect(valuesOf(near, 'thickness')?.['low']).toBeGreaterThan(millD.band.thickness ?? 0);
    expect(namesOf(stretched(millD, 0.5))).not.toContain('thickness');
    expect(namesOf(stretched(millD, 0.2))).not.toContain('gaugeLength');
  });

  it('explains what a lever hides that was typed to fit, and offers no other lever', () => {
    const fitted = tensioner(stretched(millD, 0.5), { advantage: 0.5 });
    const { remarks, causes } = checksOf(fitted);
    expect(remarks.map(({ code }) => code)).toEqual(['agreesByLever']);
    expect(causes?.ratio).toBeCloseTo(checksOf(stretched(millD, 0.5)).causes?.ratio ?? 0, 9);
    const names = causes?.causes.map(({ name }) => name);
    expect(names?.[0]).toBe('rodSide');
    expect(names?.filter((name) => /lever/i.test(name))).toEqual([]);
  });
});

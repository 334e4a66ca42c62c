import { describe, expect, it } from 'vitest';
import { worksheetChain } from '../../../../src/core/worksheet/predict/chain.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { worksheetMillResults } from '../fixtures/mill-results.ts';
import { millA, millC } from '../fixtures/mills.ts';

const middle = (inputs: Readonly<Record<string, { readonly value: number }>>) =>
  Object.fromEntries(Object.entries(inputs).map(([name, { value }]) => [name, value]));

describe('worksheetTheory', () => {
  it.each([
    ['A', millA, 14.5],
    ['C', millC, 15.5],
  ] as const)(
    'gives mill %s its stress at the top torque, worked by other code',
    (letter, mill, torque) => {
      const theory = numbersOf(worksheetChain(mill).theory);
      const stress = theory.stressOf(middle(theory.inputsAt(torque)));
      expect(stress / worksheetMillResults[letter].theoryStress).toBeCloseTo(1, 8);
    },
  );

  it('is the filled-in formula of its operands', () => {
    const { operands, inputsAt, stressOf } = numbersOf(worksheetChain(millC).theory);
    const { advantage, efficiency, dragTorque, lead, area, strandHalfAngle } = operands;
    const load = Math.PI * efficiency * advantage * (10 - dragTorque);
    const stress = load / (lead * area * Math.cos(strandHalfAngle));
    expect(stressOf(middle(inputsAt(10))) / stress).toBeCloseTo(1, 12);
  });

  it('doubts the wrench by 4 %, the band by caliper and micrometer, the drag as typed', () => {
    const inputs = numbersOf(worksheetChain(millA).theory).inputsAt(10);
    expect(inputs['torque']).toMatchObject({ value: 10, halfWidth: 0.4 });
    expect(inputs['bodyWidth']).toMatchObject({ value: 0.029, halfWidth: 0.5e-3 });
    expect(inputs['thickness']).toMatchObject({ value: 1e-3, halfWidth: 0.01e-3 });
    expect(inputs['dragTorque']).toEqual({ value: 0.8, standardUncertainty: 0.1 });
  });

  it.each(['advantage', 'dragTorque', 'dragTorqueUncertainty'])('waits for the %s', (box) => {
    const tensioner = { ...millA.tensioner, [box]: undefined };
    expect(worksheetChain({ ...millA, tensioner }).theory).toEqual({
      ready: false,
      waitsFor: [`tensioner.${box}`],
    });
  });

  it('lets a drag below 0 be tried, as trials do', () => {
    const { inputsAt, stressOf } = numbersOf(worksheetChain(millA).theory);
    const values = middle(inputsAt(10));
    expect(stressOf({ ...values, dragTorque: -1 })).toBeGreaterThan(stressOf(values));
  });
});

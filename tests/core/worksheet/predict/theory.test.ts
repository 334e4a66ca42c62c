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

  // By hand: π × 2 × 0.123 341 × 9 N·m over 3 mm × 34.65 mm² × √0.9975 (wheels 75 mm apart in radius over 1500 mm).
  it('gives mill C 67.181 MPa at 10 N·m with the efficiency that other code worked', () => {
    const { operands, inputsAt, stressOf } = numbersOf(worksheetChain(millC).theory);
    expect(stressOf(middle(inputsAt(10))) / 67.181_167e6).toBeCloseTo(1, 7);
    expect(operands).toEqual({
      advantage: 2,
      efficiency: expect.closeTo(0.123_340_615, 8),
      dragTorque: 1,
      drive: { kind: 'screw', lead: expect.closeTo(0.003, 12) },
      strandCount: 2,
      area: expect.closeTo(34.65e-6, 12),
      strandHalfAngle: expect.closeTo(Math.asin(0.05), 12),
    });
  });

  it('doubts the wrench by 4 %, the band by caliper and micrometer, the drag as typed', () => {
    const inputs = numbersOf(worksheetChain(millA).theory).inputsAt(10);
    expect(inputs['torque']).toMatchObject({ value: 10, halfWidth: 0.4 });
    expect(inputs['bodyWidth']).toMatchObject({ value: 0.029, halfWidth: 0.5e-3 });
    expect(inputs['thickness']).toMatchObject({ value: 1e-3, halfWidth: 0.01e-3 });
    expect(inputs['dragTorque']).toEqual({ value: 0.8, standardUncertainty: 0.1 });
  });

  it.each(['advantage', 'dragTorqueUncertainty'])('waits for the %s', (box) => {
    const tensioner = { ...millA.tensioner, [box]: undefined };
    expect(worksheetChain({ ...millA, tensioner }).theory).toEqual({
      ready: false,
      waitsFor: [`tensioner.${box}`],
    });
  });

  it('takes an unknown drag for up to a tenth of the torque at hand, or of that for the target', () => {
    const tensioner = { ...millA.tensioner, dragTorque: undefined };
    const known = numbersOf(worksheetChain({ ...millA, tensioner }).theory);
    expect(known.inputsAt(10)['dragTorque']).toMatchObject({
      value: expect.closeTo(0.725),
      shape: 'rectangular',
    });
    const sheet = { ...millA, tensioner, readings: [] };
    const { operands, stressOf, inputsAt } = numbersOf(worksheetChain(sheet).theory);
    const torque = operands.dragTorque / 0.05;
    expect(stressOf(middle(inputsAt(torque))) / 110e6).toBeCloseTo(1, 10);
    const target = { ...millA.target, stress: undefined };
    expect(worksheetChain({ ...sheet, target }).theory).toEqual({
      ready: false,
      waitsFor: ['use.torque'],
    });
  });

  it('knows a thickness from a label to 3 %, and as little while nothing is said', () => {
    for (const thicknessFrom of ['label', 'unasked'] as const) {
      const band = { ...millA.band, thicknessFrom };
      const inputs = numbersOf(worksheetChain({ ...millA, band }).theory).inputsAt(10);
      expect(inputs['thickness']).toMatchObject({ value: 1e-3, halfWidth: 0.03e-3 });
    }
  });

  it('lets a drag below 0 be tried, as trials do', () => {
    const { inputsAt, stressOf } = numbersOf(worksheetChain(millA).theory);
    const values = middle(inputsAt(10));
    expect(stressOf({ ...values, dragTorque: -1 })).toBeGreaterThan(stressOf(values));
  });
});

import { describe, expect, it } from 'vitest';
import { worksheetDecision } from '../../../../src/core/worksheet/decide/decision.ts';
import { worksheetEfficiency } from '../../../../src/core/worksheet/decide/efficiency.ts';
import { worksheetTurns } from '../../../../src/core/worksheet/decide/turns.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetMeasurement } from '../../../../src/core/worksheet/measure/measurement.ts';
import { worksheetChain } from '../../../../src/core/worksheet/predict/chain.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

function decide(worksheet: Worksheet) {
  const chain = worksheetChain(worksheet);
  const measurement = worksheetMeasurement(worksheet);
  const { section, strands } = chain;
  const efficiency = worksheetEfficiency(worksheet, measurement.measured, section, strands);
  const turns = worksheetTurns(worksheet, measurement.points, efficiency);
  const { bands, ...decision } = worksheetDecision(worksheet, chain, measurement, {
    efficiency,
    turns,
  });
  const other = bands[0]?.byReadings;
  if (other === undefined) throw new Error('the mill has another band');
  return { ...decision, other };
}
const limited = (makerLimitStress: number): Worksheet => ({
  ...millA,
  target: { ...millA.target, makerLimitStress },
});

describe('worksheetDecision', () => {
  it('gives all three settings of mill A', () => {
    const { setting, theorySetting, other } = decide(millA);
    expect([setting, theorySetting, other].map(({ ready }) => ready)).toEqual([true, true, true]);
  });

  it('gives no setting above a maker’s limit, by whatever route', () => {
    const { setting, theorySetting, other } = decide(limited(106e6));
    expect(refusalOf(setting)).toBe('aboveBandLimit');
    expect(refusalOf(theorySetting)).toBe('aboveBandLimit');
    expect(other.ready).toBe(true); // its target is 105 MPa
    expect(refusalOf(decide(limited(104e6)).other)).toBe('aboveBandLimit');
  });

  it('names the box of the band that is stopped, own or other, and the limit with its numbers', () => {
    const { setting, theorySetting, other } = decide(limited(104e6));
    const stopped = (field: string, stress: number) => ({
      ready: false,
      waitsFor: [field, 'target.makerLimitStress'],
      refusal: { code: 'aboveBandLimit', values: { stress, limit: 104e6 } },
    });
    expect(setting).toEqual(stopped('target.stress', 110e6));
    expect(theorySetting).toEqual(stopped('target.stress', 110e6));
    expect(other).toEqual(stopped('bands.0.targetStress', 105e6));
  });

  it('judges by the uncertainty of the best setting there is', () => {
    const share = (worksheet: Worksheet) =>
      numbersOf(decide(worksheet).rails).found.find(({ code }) => code === 'wideUncertainty')
        ?.values['share'];
    const { setting, theorySetting } = decide(millA);
    expect(share(millA)).toBe(numbersOf(setting).expandedUncertainty / 110e6);
    expect(share({ ...millA, readings: [] })).toBe(
      numbersOf(theorySetting).expandedUncertainty / 110e6,
    );
    const { readings, tensioner } = {
      readings: [],
      tensioner: { ...millA.tensioner, starts: undefined },
    };
    expect(share({ ...millA, readings, tensioner })).toBeUndefined();
  });
});

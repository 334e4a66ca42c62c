import { describe, expect, it } from 'vitest';
import { knownTarget } from '../../../../src/core/worksheet/decide/setting.ts';
import type { SettingReach } from '../../../../src/core/worksheet/decide/setting-reach.ts';
import { worksheetTheorySetting } from '../../../../src/core/worksheet/decide/theory-setting.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { ready } from '../../../../src/core/worksheet/outcome.ts';
import { worksheetChain } from '../../../../src/core/worksheet/predict/chain.ts';
import { worksheetPredicted } from '../../../../src/core/worksheet/predict/prediction.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { worksheetMillResults } from '../fixtures/mill-results.ts';
import { worksheetMills } from '../fixtures/mills.ts';

const settingOf = (worksheet: Worksheet) => {
  return worksheetTheorySetting(worksheetChain(worksheet).theory, knownTarget(worksheet));
};

describe('worksheetTheorySetting', () => {
  it.each(['A', 'B', 'C', 'E', 'F'] as const)(
    'gives mill %s its torque, worked by other code',
    (letter) => {
      const { torque } = numbersOf(settingOf(worksheetMills[letter]));
      expect(torque / worksheetMillResults[letter].theorySetting).toBeCloseTo(1, 8);
    },
  );

  it('is where the prediction meets the target, with the same uncertainty', () => {
    const setting = numbersOf(settingOf(worksheetMills.C));
    const { theory } = worksheetChain(worksheetMills.C);
    const predicted = numbersOf(worksheetPredicted(theory, ready({ torque: setting.torque })));
    expect(predicted.stress / setting.stress).toBeCloseTo(1, 12);
    expect(predicted.expandedUncertainty / setting.expandedUncertainty).toBeCloseTo(1, 12);
  });

  it('reaches as far below the target as above it, and keeps the target with its operands', () => {
    const { low, high, expandedUncertainty, operands } = numbersOf(settingOf(worksheetMills.A));
    expect(low).toBe(110e6 - expandedUncertainty);
    expect(high).toBe(110e6 + expandedUncertainty);
    const theory = numbersOf(worksheetChain(worksheetMills.A).theory);
    expect(operands).toEqual({ ...theory.operands, targetStress: 110e6 });
  });

  it('may need the torques at which the prediction meets the two ends of its interval', () => {
    const { torqueLow, torqueHigh, low, high } = numbersOf(settingOf(worksheetMills.A));
    const { theory } = worksheetChain(worksheetMills.A);
    const at = (torque: number) => numbersOf(worksheetPredicted(theory, ready({ torque }))).stress;
    expect(at(torqueLow) / low).toBeCloseTo(1, 12);
    expect(at(torqueHigh) / high).toBeCloseTo(1, 12);
  });

  it('is less sure than the range of the losses alone: wrench, section and drag add to it', () => {
    const { tensioner } = worksheetMills.A;
    const loss = numbersOf(worksheetChain(worksheetMills.A).screw);
    const reach = ({ torqueLow, torqueHigh }: SettingReach) => torqueHigh - torqueLow;
    const known = { ...tensioner.friction, kind: 'efficiency' as const };
    const { efficiency } = loss;
    const sure = { ...tensioner, friction: { ...known, low: efficiency, high: efficiency } };
    const whole = numbersOf(settingOf(worksheetMills.A));
    const rest = numbersOf(settingOf({ ...worksheetMills.A, tensioner: sure }));
    expect(rest.torque).toBeCloseTo(whole.torque, 9);
    expect(reach(rest)).toBeGreaterThan(0.05 * rest.torque);
    expect(reach(rest)).toBeLessThan(reach(whole));
  });

  it('needs no reading, but a target', () => {
    expect(settingOf({ ...worksheetMills.A, readings: [] }).ready).toBe(true);
    const target = { ...worksheetMills.A.target, stress: undefined };
    expect(settingOf({ ...worksheetMills.A, target })).toEqual({
      ready: false,
      waitsFor: ['target.stress'],
    });
  });
});

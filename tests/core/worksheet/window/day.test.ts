import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { demandingMill, demandingMill as mill } from '../fixtures/demanding-mill.ts';
import { derivedOf } from '../fixtures/derived-of.ts';

const dayOf = (worksheet: Worksheet) => numbersOf(evaluateWorksheet(worksheet).day);
const withoutTurns: Worksheet = {
  ...mill,
  readings: mill.readings.map((row) => ({ ...row, turns: undefined })),
};

describe('a check over the day', () => {
  it('shows the target at the setting’s torque while everything is cold', () => {
    const { cold } = dayOf(mill);
    const { torque } = numbersOf(evaluateWorksheet(mill).setting);
    expect(cold).toEqual({ stress: 110e6, torque });
  });

  it('shows at least what rigid centers would leave, and at most the target, without turns', () => {
    const { warmLeast, warmMost, isSupportKnown } = dayOf(withoutTurns);
    const rigid = derivedOf('A', 'same, rigid support (MPa)') * 1e6;
    expect(isSupportKnown).toBe(false);
    expect(warmLeast.stress - 110e6).toBeCloseTo(rigid, 0);
    expect(warmMost.stress).toBe(110e6);
  });

  it('shows one number where the turns tell how stiff the support is', () => {
    const { warmLeast, warmMost, isSupportKnown } = dayOf(mill);
    const turns = numbersOf(evaluateWorksheet(mill).turns);
    const support = Number(turns.supportStiffness);
    const left = support / (turns.bandStiffness + support);
    expect(isSupportKnown).toBe(true);
    expect(warmLeast).toEqual(warmMost);
    const rigid = derivedOf('A', 'same, rigid support (MPa)') * 1e6;
    expect(warmLeast.stress - 110e6).toBeCloseTo(left * rigid, 0);
  });

  it('shows the cold torque again on a mill that has not warmed, and no less than the drag on one that is slack', () => {
    const cool = dayOf({ ...mill, demands: { ...mill.demands, warming: 0 } });
    expect(cool.warmLeast).toEqual(cool.cold);
    const hot = dayOf({ ...withoutTurns, demands: { ...demandingMill.demands, warming: 60 } });
    expect(hot.warmLeast).toEqual({ stress: 0, torque: 0.8 });
  });
});

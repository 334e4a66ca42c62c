/** What the boxes of a plan come to, and what stands for empty ones. */
import { describe, expect, it } from 'vitest';
import { planChanges } from '../../../src/core/plan.ts';
import { emptyWorksheet, type Worksheet } from '../../../src/core/worksheet.ts';
import {
  changedAsPrinted,
  type PlanBoxes,
  plannedFrom,
  RIGS,
} from '../../../src/worksheet/plan/inputs.ts';

const boxes: PlanBoxes = {
  top: { torque: 15, from: 'typed' },
  firstTorque: undefined,
  steps: 10,
  series: 1,
};
const { tensioner, rig } = emptyWorksheet;
const sheet: Worksheet = { ...emptyWorksheet, tensioner: { ...tensioner, dragTorque: 1 } };
const scale = { kind: 'torque', system: 'metric' } as const;
const from = (changed: Partial<PlanBoxes>, worksheet = sheet) =>
  plannedFrom({ ...boxes, ...changed }, worksheet, scale);

describe('a plan', () => {
  it('begins at a tenth of the load above the no-load torque, with a bar and a dial of its own', () => {
    const { bar, graduation } = RIGS.metric;
    expect(from({})).toMatchObject({
      plan: { gaugeLength: bar, graduation, readTo: graduation, firstShare: 0.1, steps: 10 },
      barIsAssumed: true,
      dialIsAssumed: true,
    });
    expect(from({})).toHaveProperty('torques.0', 2.5); // 1 + a tenth of 14, to half a N·m
  });

  it('takes what is typed', () => {
    const known = { ...rig, gaugeLength: 0.5, graduation: 2e-6, readTo: 1e-6 };
    expect(from({ firstTorque: 4.5, series: 3 }, { ...sheet, rig: known })).toMatchObject({
      plan: { gaugeLength: 0.5, graduation: 2e-6, readTo: 1e-6, firstShare: 0.25, series: 3 },
      topTorque: 15,
      barIsAssumed: false,
      dialIsAssumed: false,
    });
  });

  it('begins at no load where the first torque only turns the screw', () =>
    expect(from({ firstTorque: 0.5 })).toHaveProperty('plan.firstShare', 0));

  it('counts the load above the middle of what a no-load torque may be', () =>
    expect(from({ firstTorque: 2.175 }, emptyWorksheet)).toHaveProperty(
      'plan.firstShare',
      expect.closeTo((2.175 - 0.75) / (15 - 0.75), 12),
    ));

  it('has no torques without a top torque, and can be tried all the same', () =>
    expect(from({ top: undefined })).toMatchObject({ torques: [], plan: { steps: 10 } }));

  it.each([
    ['typed', 13.73, 13.5],
    ['typed', 13.7, 13.7],
    ['use', 34.6, 35],
    ['readings', 45, 45],
    ['targetByReadings', 38.4, 39],
    ['targetByCalculation', 9.03, 9.2],
    ['limits', 38.4, 38],
  ] as const)('goes up to what a wrench shows: %s, %s to %s N·m', (source, torque, printed) =>
    expect(from({ top: { torque, from: source } })).toMatchObject({
      topTorque: expect.closeTo(printed, 9),
      topFrom: source,
    }),
  );

  it('is tried at the torques that are printed', () => {
    const planned = from({});
    if (typeof planned === 'string') return expect.fail();
    expect(planned.torques).toEqual([2.5, 4, 5, 6.5, 8, 9.5, 11, 12, 13.5, 15]);
    expect(planned.plan.loads).toEqual(planned.torques.map((torque) => (torque - 1) / 14));
  });

  it.each(['moreSteps', 'startAtTenth', 'longerBar'] as const)(
    'is tried with %s at the torques that would then be printed',
    (wanted) => {
      const planned = from({ firstTorque: 4.5 });
      if (typeof planned === 'string') return expect.fail();
      const changed = planChanges(planned.plan, 0.6).find(({ change }) => change === wanted);
      if (!changed) return expect.fail();
      const { steps, loads } = changedAsPrinted(changed.plan, planned, sheet, scale);
      const printed = {
        moreSteps: from({ firstTorque: 4.5, steps }),
        startAtTenth: from({}),
        longerBar: planned,
      }[wanted];
      expect(loads).toEqual(typeof printed === 'object' && printed.plan.loads);
    },
  );

  it.each([
    [{ steps: 5 }, 'steps'],
    [{ steps: 31 }, 'steps'],
    [{ steps: undefined }, 'steps'],
    [{ series: 6 }, 'series'],
    [{ firstTorque: 14 }, 'firstTorque'],
    [{ firstTorque: 20 }, 'firstTorque'],
  ] as const)('is refused by its box: %j', (changed, trouble) =>
    expect(from(changed)).toBe(trouble),
  );
});

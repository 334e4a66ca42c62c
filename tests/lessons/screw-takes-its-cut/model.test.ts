import { describe, expect, it } from 'vitest';
import { raisingTorqueHandbook } from '../../../src/core/screw/handbook.ts';
import { raisingTorque } from '../../../src/core/screw/torque.ts';
import { screwOf } from '../../../src/lessons/screw-takes-its-cut/friction-doubt.ts';
import { screwTakesItsCut } from '../../../src/lessons/screw-takes-its-cut/model.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';

const at = (inputs: Partial<InputsOf<typeof screwTakesItsCut>> = {}) =>
  evaluated(screwTakesItsCut, inputsAt(screwTakesItsCut, inputs, 'metric'));

/** Two invented mills, worked at forty digits apart from this code (`derived`). */
const INCH_MILL = { torque: 41.3664855 };
const METRIC_MILL = {
  lead: 0.004,
  meanDiameter: 0.018,
  threadForm: 'trapezoidal',
  threadFriction: 0.14,
  collarFriction: 0.004,
  collarDiameter: 0.031,
  torque: 12.9064,
  area: 29e-6,
} as const;
const degrees = (angle: number) => (angle * 180) / Math.PI;

describe('the inch mill, Acme 1-5 with a plain greased collar', () => {
  const values = at(INCH_MILL);
  it('has the worked thrust and stress', () => {
    expect(values.thrust).toBeCloseTo(9225.61, 0);
    expect(values.stress / 1e6).toBeCloseTo(117.211, 2);
  });
  it('splits its torque as worked, the collar taking nearly half', () => {
    expect(values.threadTorque).toBeCloseTo(21.8234, 3);
    expect(values.collarTorque).toBeCloseTo(19.5432, 3);
    expect(values.looseningTorque).toBeCloseTo(26.1783, 3);
    expect(values.efficiency).toBeCloseTo(0.180314, 6);
  });
  it('climbs and holds as worked', () => {
    expect(degrees(values.leadAngle)).toBeCloseTo(4.04611, 5);
    expect(values.holdingFriction).toBeCloseTo(0.0684931, 7);
  });
  it('gives the two-torque estimates as worked', () => {
    expect(values.efficiencyByTwo).toBeCloseTo(0.183581, 6);
    expect(values.thrustByTwo).toBeCloseTo(9392.75, 0);
  });
  it('stays put with one start and turns back with two', () =>
    expect([at(INCH_MILL), at({ lead: 0.01016 })].map((one) => one.holds)).toEqual([1, 0]));
});

describe('the metric mill, trapezoidal on a ball bearing', () => {
  const values = at(METRIC_MILL);
  it('has the worked thrust, efficiency and torques', () => {
    expect(values.thrust).toBeCloseTo(6380, 0);
    expect(values.efficiency).toBeCloseTo(0.314699, 6);
    expect(values.collarTorque).toBeCloseTo(0.39556, 4);
    expect(values.looseningTorque).toBeCloseTo(4.6117, 3);
    expect(values.thrustByTwo).toBeCloseTo(6514.67, 0);
  });
  it('has the worked stress of its band', () => expect(values.stress / 1e6).toBeCloseTo(110, 1));
});

describe('the claims of the lesson', () => {
  it('lets the handbook form differ by less than two hundredths of a percent', () => {
    for (const mill of [INCH_MILL, METRIC_MILL]) {
      const screw = screwOf(at(mill));
      const excess = raisingTorqueHandbook(screw, 1) / raisingTorque(screw, 1) - 1;
      expect(excess).toBeGreaterThan(0);
      expect(excess).toBeLessThan(2e-4);
    }
  });
  it('shares out the whole of the work', () => {
    const { efficiency, threadShare, collarShare } = at();
    expect(efficiency + threadShare + collarShare).toBeCloseTo(1, 12);
  });
  it('keeps a thread that holds below half, whatever its form', () => {
    for (const threadForm of screwTakesItsCut.inputs.threadForm.options) {
      for (const lead of [0.002, 0.005, 0.01, 0.02]) {
        const { holdingFriction } = at({ threadForm, lead });
        const { threadEfficiency } = at({ threadForm, lead, threadFriction: holdingFriction });
        expect(threadEfficiency).toBeLessThan(0.5);
      }
    }
  });
  it('turns the push to let down the other way exactly where the thread stops holding', () => {
    const { holdingFriction } = at();
    const [below, above] = [0.999, 1.001].map((times) =>
      at({ threadFriction: holdingFriction * times }),
    );
    expect([below?.['holds'], above?.['holds']]).toEqual([0, 1]);
    expect(below?.['pushDown']).toBeLessThan(0);
    expect(above?.['pushDown']).toBeGreaterThan(0);
  });
  it('brackets the thrust between more and less friction', () => {
    const { thrust, thrustLow, thrustHigh } = at();
    expect(thrustLow).toBeLessThan(thrust);
    expect(thrustHigh).toBeGreaterThan(thrust);
  });
  it('gives more thrust at the same torque once greased', () => {
    const dry = at({ threadFriction: 0.2, collarFriction: 0.17 });
    const greased = at({ threadFriction: 0.1, collarFriction: 0.08 });
    expect((greased['thrust'] ?? 0) / (dry['thrust'] ?? 1)).toBeGreaterThan(1.7);
  });
});

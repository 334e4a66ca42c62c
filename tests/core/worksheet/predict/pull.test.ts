import { describe, expect, it } from 'vitest';
import { stressFromTorque, torqueForStress } from '../../../../src/core/screw/tensioner.ts';
import {
  efficiencyOfSlope,
  idealPull,
  loadForStress,
  type Pull,
  pullOf,
  strandOf,
} from '../../../../src/core/worksheet/predict/pull.ts';

const screw: Pull = {
  advantage: 1.5,
  efficiency: 0.3,
  dragTorque: 0.8,
  drive: { kind: 'screw', lead: 0.004 },
  area: 30e-6,
  strandCount: 2,
  strandHalfAngle: 0.05,
};
const cylinder: Pull = {
  ...screw,
  advantage: 1,
  efficiency: 0.95,
  dragTorque: 2e5,
  drive: { kind: 'cylinder', pistonArea: 1250e-6 },
  area: 50e-6,
  strandHalfAngle: 0,
};

describe('from a load to a stress and back', () => {
  // By hand: 100 MPa × 2 × 50 mm² are 10 000 N; over 0.95 × 1250 mm² that is 8.42105 MPa, above 0.2 MPa.
  it('matches a hand-worked cylinder: 86.2105 bar for 100 MPa', () =>
    expect(loadForStress(cylinder, 100e6) / 1e5).toBeCloseTo(86.2105, 4));

  it('is what the screw alone works out, by the same formula written otherwise', () => {
    const drive = { ...screw, lead: 0.004 };
    expect(loadForStress(screw, 110e6)).toBeCloseTo(torqueForStress(drive, screw, 110e6), 9);
    const torque = 21;
    const ours = (idealPull(screw) * screw.efficiency * (torque - screw.dragTorque)) / screw.area;
    expect(ours / stressFromTorque(drive, screw, torque)).toBeCloseTo(1, 12);
  });

  it('needs half of the load above the empty one for a single strip', () => {
    const strip = { ...cylinder, strandCount: 1 } as const;
    const above = (pull: Pull) => loadForStress(pull, 100e6) - pull.dragTorque;
    expect(above(strip)).toBeCloseTo(above(cylinder) / 2, 6);
    expect([pullOf(700, strip), strandOf(700, strip)]).toEqual([700, 700]);
    expect([pullOf(700, cylinder), strandOf(1400, cylinder)]).toEqual([1400, 700]);
  });

  it('gives an efficiency back from the slope that it makes', () => {
    for (const pull of [screw, cylinder]) {
      const slope = 1e6 / (loadForStress(pull, 1e6) - pull.dragTorque);
      expect(efficiencyOfSlope(slope, pull)).toBeCloseTo(pull.efficiency, 12);
    }
  });

  it('wants no more than the empty load for no stress', () =>
    expect(loadForStress(cylinder, 0)).toBe(cylinder.dragTorque));
});

import { describe, expect, it } from 'vitest';
import { settingReach } from '../../../../src/core/worksheet/decide/setting-reach.ts';

const torque = { torque: 11, dragTorque: 1, stress: 100e6 };

describe('settingReach', () => {
  it('matches the hand-worked case: 100 ± 20 MPa at 10 N·m above the drag are 2 N·m either way', () =>
    expect(settingReach(torque, 8e6, 2.5)).toEqual({
      stress: 100e6,
      standardUncertainty: 8e6,
      expandedUncertainty: 20e6,
      low: 80e6,
      high: 120e6,
      torqueLow: 9,
      torqueHigh: 13,
    }));

  it('never goes below the drag, where nothing pulls on the band', () =>
    expect(settingReach(torque, 60e6, 2).torqueLow).toBe(1));
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  apparentStressThermal,
  settingChecks,
  stressDrift,
  thermalSlack,
  wheelForceDrift,
} from '../../src/core/drift.ts';
import { evenly } from '../evenly.ts';

const steel = 11.5e-6;
const still = { expansion: steel, temperatureChange: 0 };
const mill = {
  bandStiffness: 6e6,
  supportStiffness: 4e6,
  band: { expansion: steel, temperatureChange: 15, loopLength: 4 },
  frame: { ...still, centreDistance: 1.25 },
  wheels: { ...still, diameter: 0.47 },
};
const changes = evenly(-60, 60);

describe('thermalSlack', () => {
  it('is 0.345 mm for 15 K on a loop of 4 m, by hand: half of 4 × 15 × 11.5e-6', () =>
    expect(thermalSlack(mill)).toBeCloseTo(0.345e-3, 12));

  it('is less by what frame and wheels grow', () => {
    const frame = { ...mill.frame, temperatureChange: 10 };
    const wheels = { ...mill.wheels, temperatureChange: 10 };
    const byFrame = 1.25 * 10 * steel;
    const byWheels = (Math.PI / 2) * 0.47 * 10 * steel;
    expect(thermalSlack({ ...mill, frame, wheels })).toBeCloseTo(0.345e-3 - byFrame - byWheels, 12);
  });

  it('grows as the strands lean, for band and wheels but not for the frame, by hand', () => {
    const frame = { ...mill.frame, temperatureChange: 10 };
    const wheels = { ...mill.wheels, temperatureChange: 10 };
    const byFrame = 1.25 * 10 * steel;
    const byWheels = (Math.PI / 2) * 0.47 * 10 * steel;
    const leaning = thermalSlack({ ...mill, frame, wheels, strandHalfAngle: Math.PI / 3 });
    // cos 60° is a half.
    expect(leaning).toBeCloseTo(0.345e-3 / 0.5 - byFrame - byWheels / 0.5, 12);
  });

  // A loop of 2C + πD: what warms as one keeps its fit.
  it('is nil where band, frame and wheels warm alike', () =>
    fc.assert(
      fc.property(changes, (temperatureChange) => {
        const loopLength = 2 * 1.25 + Math.PI * 0.47;
        const warm = {
          band: { expansion: steel, temperatureChange, loopLength },
          frame: { expansion: steel, temperatureChange, centreDistance: 1.25 },
          wheels: { expansion: steel, temperatureChange, diameter: 0.47 },
        };
        expect(thermalSlack(warm)).toBeCloseTo(0, 15);
      }),
    ));

  it('refuses what cannot be', () => {
    const band = (more: object) => () => thermalSlack({ ...mill, band: { ...mill.band, ...more } });
    expect(band({ loopLength: 0 })).toThrow('loopLength must be above 0 m');
    expect(band({ temperatureChange: 61 })).toThrow(
      'band temperatureChange must be between -60 and 60 K',
    );
    expect(band({ expansion: -1 })).toThrow('band expansion must be at least 0 1/K');
    expect(() => thermalSlack({ ...mill, frame: { ...mill.frame, centreDistance: 0 } })).toThrow(
      'centre',
    );
    expect(() => thermalSlack({ ...mill, wheels: { ...mill.wheels, diameter: 0 } })).toThrow(
      'diameter',
    );
    expect(() => thermalSlack({ ...mill, strandHalfAngle: 2 })).toThrow(
      'strandHalfAngle must be below',
    );
  });
});

describe('wheelForceDrift', () => {
  it('is −828 N by hand: 0.345 mm against 2.4 MN/m of band and support in series', () =>
    expect(wheelForceDrift(mill)).toBeCloseTo(-828, 9));

  it('is worst on rigid centres and nil under a weight', () => {
    const drift = (supportStiffness: number) => wheelForceDrift({ ...mill, supportStiffness });
    expect(drift(Number.POSITIVE_INFINITY)).toBeCloseTo(-2070, 9);
    expect(drift(0)).toBeCloseTo(0, 15);
  });

  it('changes sign with the temperature: a cooling band tightens itself', () => {
    const cooling = { ...mill, band: { ...mill.band, temperatureChange: -15 } };
    expect(wheelForceDrift(cooling)).toBeCloseTo(828, 9);
  });

  it('refuses a slack band and a negative support', () => {
    expect(() => wheelForceDrift({ ...mill, bandStiffness: 0 })).toThrow('bandStiffness must be');
    expect(() => wheelForceDrift({ ...mill, supportStiffness: -1 })).toThrow(
      'supportStiffness must',
    );
  });
});

describe('stressDrift', () => {
  // Stretch with no way out: σ = −E·α·ΔT, as for any bar between rigid walls.
  it('is −E·α·ΔT on rigid centres, lean of the strands or not', () => {
    const angles = evenly(0, 0.3);
    fc.assert(
      fc.property(changes, angles, (temperatureChange, strandHalfAngle) => {
        const rigid = {
          ...mill,
          strandHalfAngle,
          bandStiffness: (4 * 205e9 * 30e-6 * Math.cos(strandHalfAngle) ** 2) / 4,
          supportStiffness: Number.POSITIVE_INFINITY,
          band: { ...mill.band, temperatureChange },
        };
        expect(stressDrift(rigid, 30e-6) / 1e6).toBeCloseTo(-2.3575 * temperatureChange, 8);
      }),
    );
  });

  // Hibbeler, Mechanics of Materials, 4.6, example 4.10 (from memory): a steel bar between rigid walls,
  // 29 000 ksi and 6.60e-6/°F, 60 °F warmer, carries 11.5 ksi.
  it('is 11.5 ksi of compression in the bar of the textbook', () => {
    const ksi = 6_894_757.293;
    const expansion = 6.6e-6 * 1.8;
    const bar = {
      ...mill,
      bandStiffness: (4 * 29_000 * ksi * 30e-6) / 4,
      supportStiffness: Number.POSITIVE_INFINITY,
      band: { expansion, temperatureChange: 60 / 1.8, loopLength: 4 },
    };
    expect(stressDrift(bar, 30e-6) / ksi).toBeCloseTo(-11.5, 1);
  });

  it('refuses no section', () =>
    expect(() => stressDrift(mill, 0)).toThrow('area must be above 0 m²'));
});

describe('settingChecks', () => {
  const area = 30e-6;

  it('takes −828 N on two strands of 30 mm² from 110 MPa when warm, adds it when tightened warm', () => {
    const { cold, warm, tightenedWarm } = settingChecks(110e6, mill, area);
    expect(cold).toBe(110e6);
    expect(warm).toBeCloseTo(110e6 - 13.8e6, 5);
    expect(tightenedWarm).toBeCloseTo(110e6 + 13.8e6, 5);
  });

  it('shows the same cold and warm under constant pressure', () =>
    expect(settingChecks(110e6, { ...mill, supportStiffness: 0 }, area)).toEqual({
      cold: 110e6,
      warm: 110e6,
      tightenedWarm: 110e6,
    }));

  it('shows more than the setting on a mill that has cooled', () => {
    const cooled = { ...mill, band: { ...mill.band, temperatureChange: -15 } };
    expect(settingChecks(110e6, cooled, area).warm).toBeCloseTo(123.8e6, 5);
  });

  it('never finds a band that pushes', () => {
    expect(settingChecks(10e6, mill, area).warm).toBe(0);
    const cooled = { ...mill, band: { ...mill.band, temperatureChange: -15 } };
    expect(settingChecks(10e6, cooled, area).tightenedWarm).toBe(0);
  });

  it('refuses no setting', () =>
    expect(() => settingChecks(0, mill, area)).toThrow('setting must be above 0 Pa'));
});

describe('apparentStressThermal', () => {
  const both = (bar: number) => ({
    youngsModulus: 205e9,
    band: { expansion: steel, temperatureChange: 5 },
    bar: { expansion: bar, temperatureChange: 5 },
  });

  it('is nil on a steel bar, −11.8 MPa on aluminium and +7.7 MPa on wood at 5 K, by hand', () => {
    expect(apparentStressThermal(both(steel))).toBe(0);
    expect(apparentStressThermal(both(23e-6))).toBeCloseTo(-205e9 * 11.5e-6 * 5, 3);
    expect(apparentStressThermal(both(4e-6))).toBeCloseTo(205e9 * 7.5e-6 * 5, 3);
  });

  it('refuses what cannot be', () => {
    expect(() => apparentStressThermal({ ...both(steel), youngsModulus: 0 })).toThrow(
      'youngsModulus',
    );
    expect(() => apparentStressThermal(both(Number.NaN))).toThrow(
      'bar expansion must be at least 0',
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chordShift,
  coilSetLeft,
  coilShift,
  gaugeWeightShift,
} from '../../../src/core/zero/false-zero.ts';
import { evenly } from '../../evenly.ts';

const coil = { gaugeLength: 0.5, coilRadius: 8 };
const part = { endLength: 0.1, strand: 1.35, from: -0.2, to: 0.2 };

describe('coilShift', () => {
  it('is 0.875 mm for 14 mm of height on 0.5 m curved to 8 m, by hand', () =>
    expect(coilShift(coil, 0.014)).toBeCloseTo(0.875e-3, 15));

  it('flips with the side that the bar is on', () =>
    fc.assert(
      fc.property(evenly(-0.05, 0.05), (height) => {
        expect(coilShift(coil, -height) + coilShift(coil, height)).toBe(0);
      }),
    ));

  it('refuses what cannot be', () => {
    expect(() => coilShift({ ...coil, gaugeLength: 0 }, 0.01)).toThrow(
      'gaugeLength must be above 0 m',
    );
    expect(() => coilShift({ ...coil, coilRadius: 0 }, 0.01)).toThrow(
      'coilRadius must be above 0 m',
    );
    expect(() => coilShift(coil, Number.NaN)).toThrow(
      'height must be a finite number of m (was NaN)',
    );
  });
});

describe('chordShift', () => {
  it('is 81.4 µm for 0.5 m on 8 m, by hand: L³/24R² less its next term L⁵/1920R⁴', () =>
    expect(chordShift(coil)).toBeCloseTo(0.125 / 1536 - 0.03125 / (1920 * 4096), 12));

  it('is a whole half circle less its diameter at the most', () =>
    expect(chordShift({ gaugeLength: Math.PI, coilRadius: 1 })).toBeCloseTo(Math.PI - 2, 12));

  it('refuses more than half a circle', () =>
    expect(() => chordShift({ gaugeLength: 3.2, coilRadius: 1 })).toThrow(
      /^gaugeLength must be at most 3\.14159\d* m \(was 3\.2\)$/,
    ));

  it('refuses what cannot be', () => {
    expect(() => chordShift({ ...coil, gaugeLength: -1 })).toThrow(
      'gaugeLength must be above 0 m (was -1)',
    );
    expect(() => chordShift({ ...coil, coilRadius: 0 })).toThrow(
      'coilRadius must be above 0 m (was 0)',
    );
  });
});

describe('coilSetLeft', () => {
  it('is the mean of cosh(κx)/cosh(κs/2), summed up step by step', () => {
    const steps = 20000;
    let total = 0;
    for (let i = 0; i < steps; i += 1)
      total += Math.cosh((-0.2 + (0.4 * (i + 0.5)) / steps) / 0.1) / Math.cosh(6.75);
    expect(coilSetLeft(part)).toBeCloseTo(total / steps, 9);
  });

  it('is all of it in a slack strand and at the wheel', () => {
    expect(coilSetLeft({ ...part, endLength: 1e3 })).toBeCloseTo(1, 5);
    expect(coilSetLeft({ ...part, from: 0.675 - 1e-6, to: 0.675 })).toBeCloseTo(1, 4);
  });

  it('fades by e for each end length from the wheel, and does not overflow', () => {
    const at = (distance: number) =>
      coilSetLeft({
        endLength: 0.001,
        strand: 2.3,
        from: 1.15 - distance - 1e-7,
        to: 1.15 - distance,
      });
    expect(at(0.02) / at(0.021)).toBeCloseTo(Math.E, 4);
  });

  it('falls as the tension shortens the end length', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 2, noNaN: true }), (endLength) => {
        const tighter = coilSetLeft({ ...part, endLength: endLength * 0.9 });
        expect(tighter).toBeLessThan(coilSetLeft({ ...part, endLength }));
      }),
    ));

  it('refuses what cannot be', () => {
    expect(() => coilSetLeft({ ...part, endLength: 0 })).toThrow('endLength must be above 0 m');
    expect(() => coilSetLeft({ ...part, strand: 0 })).toThrow('strand must be above 0 m');
    expect(() => coilSetLeft({ ...part, from: -0.7 })).toThrow(
      'from must be between -0.675 and 0.675 m (was -0.7)',
    );
    expect(() => coilSetLeft({ ...part, to: -0.3 })).toThrow('to must be between -0.2 and 0.675 m');
    expect(() => coilSetLeft({ ...part, to: -0.2 })).toThrow('to − from must be above 0 m');
  });
});

describe('gaugeWeightShift', () => {
  const bar = { height: 0.012, weight: 8, tension: 1000 };
  it('is 48 µm for 8 N at 12 mm on a strand of 1 kN, by hand', () =>
    expect(gaugeWeightShift(bar)).toBeCloseTo(48e-6, 15));

  it('flips underneath and is nil for a bar without weight', () => {
    expect(gaugeWeightShift({ ...bar, height: -0.012 })).toBeCloseTo(-48e-6, 15);
    expect(gaugeWeightShift({ ...bar, weight: 0 })).toBe(0);
  });

  it('dies as one over the tension', () =>
    fc.assert(
      fc.property(fc.double({ min: 10, max: 1e4, noNaN: true }), (tension) => {
        expect(gaugeWeightShift({ ...bar, tension }) * tension).toBeCloseTo(0.048, 12);
      }),
    ));

  it('refuses what cannot be', () => {
    expect(() => gaugeWeightShift({ ...bar, tension: 0 })).toThrow('tension must be above 0 N');
    expect(() => gaugeWeightShift({ ...bar, weight: -1 })).toThrow('weight must be at least 0 N');
    expect(() => gaugeWeightShift({ ...bar, height: Number.NaN })).toThrow(
      'height must be a finite number of m (was NaN)',
    );
  });
});

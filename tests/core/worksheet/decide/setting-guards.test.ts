import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guards } from '../../../../src/core/worksheet/decide/setting-guards.ts';
import { evenly } from '../../../evenly.ts';

const quiet = {
  stress: 110e6,
  expandedUncertainty: 10e6,
  peakStress: 530e6,
  bandStressLimit: 140e6,
  wheelForce: 6400,
  rimPull: 375,
  millForceLimit: 9000,
  bearingForceLimit: 8000,
  slipMargin: 1.9,
  discDeflection: 0.4e-3,
  discConeHeight: 0.7e-3,
  threadFriction: 0.14,
  selfLockingFriction: 0.07,
};
const told = (setting: Parameters<typeof guards>[0]) =>
  guards(setting).map(({ code, level }) => `${level} ${code}`);

describe('guards', () => {
  it('say nothing of a setting well within its rails, and nothing of what is not known', () => {
    expect(guards(quiet)).toEqual([]);
    expect(guards({ stress: 110e6 })).toEqual([]);
  });

  // The limits, each a little within and a little beyond: common practice, no source.
  it.each([
    ['stop aboveBandLimit', { bandStressLimit: 120e6 }, { bandStressLimit: 109e6 }],
    ['warn mayExceedBandLimit', { bandStressLimit: 120e6 }, { bandStressLimit: 119e6 }],
    ['warn mayExceedBandLimit', { bandStressLimit: 120e6 }, { bandStressLimit: 110e6 }],
    ['stop aboveMillLimit', { millForceLimit: 7000 }, { millForceLimit: 6399 }],
    ['warn mayExceedMillLimit', { millForceLimit: 6982 }, { millForceLimit: 6981 }],
    ['warn mayExceedMillLimit', { millForceLimit: 7000 }, { millForceLimit: 6400 }],
    ['stop aboveBearingLimit', { bearingForceLimit: 6775 }, { bearingForceLimit: 6774 }],
    ['warn nearYield', { peakStress: 649e6 }, { peakStress: 651e6 }],
    ['warn nearYield', { yieldStrength: 901e6 }, { yieldStrength: 899e6 }],
    ['stop beyondYieldShare', { peakStress: 300e6 }, { peakStress: 871e6 }],
    ['stop discSpringTooFlat', { discDeflection: 0.524e-3 }, { discDeflection: 0.526e-3 }],
    ['warn nearSlip', { slipMargin: 1.2 }, { slipMargin: 1.19 }],
    ['warn mayBackOff', { threadFriction: 0.0841 }, { threadFriction: 0.0839 }],
    ['warn mayBackOff', { selfLockingFriction: 0.1 }, { selfLockingFriction: 0.2 }],
    [
      'note outsideCommonPractice',
      { stress: 50e6, expandedUncertainty: 0 },
      { stress: 49e6, expandedUncertainty: 0 },
    ],
    [
      'note outsideCommonPractice',
      { stress: 200e6, bandStressLimit: 300e6 },
      { stress: 201e6, bandStressLimit: 300e6 },
    ],
    ['note wideUncertainty', { expandedUncertainty: 16.4e6 }, { expandedUncertainty: 16.6e6 }],
  ])('tell: %s', (line, within, beyond) => {
    expect(told({ ...quiet, ...within })).toEqual([]);
    expect(told({ ...quiet, ...beyond })).toEqual([line]);
  });

  it('say nothing of a limit while what it limits is not known, nor the other way round', () => {
    const limits = {
      millForceLimit: 1,
      bearingForceLimit: 1,
      discConeHeight: 1e-6,
      selfLockingFriction: 9,
    };
    const limited = { wheelForce: 1e6, discDeflection: 1, threadFriction: 1e-6 };
    expect(guards({ stress: 110e6, ...limits })).toEqual([]);
    expect(guards({ stress: 110e6, ...limited })).toEqual([]);
  });

  // Numbers that are exact as they are stored: 800/1000, 0.75 × 0.004, 1.2 × 0.1 and 15/100.
  it('let the limit itself pass', () => {
    const peakStress = { yieldStrength: 1000e6, peakStress: 800e6, expandedUncertainty: 0 };
    expect(told({ ...quiet, ...peakStress })).toEqual(['warn nearYield']);
    expect(told({ stress: 110e6, discDeflection: 0.003, discConeHeight: 0.004 })).toEqual([]);
    expect(told({ stress: 110e6, threadFriction: 0.12, selfLockingFriction: 0.1 })).toEqual([]);
    expect(told({ stress: 100e6, expandedUncertainty: 15e6 })).toEqual([]);
  });

  it('leave out the rim pull and the uncertainty where they are not given', () => {
    expect(told({ stress: 110e6, wheelForce: 6400, bearingForceLimit: 6400 })).toEqual([]);
    expect(told({ stress: 110e6, peakStress: 660e6 })).toEqual([]);
    expect(told({ stress: 110e6, peakStress: 661e6 })).toEqual(['warn nearYield']);
  });

  it('take a stress whose doubt is not given as exact', () => {
    expect(told({ stress: 110e6, bandStressLimit: 110e6 })).toEqual([]);
    expect(told({ stress: 110e6, wheelForce: 6400, millForceLimit: 6400 })).toEqual([]);
  });

  it('put stops first, then warnings, then notes', () =>
    expect(told({ stress: 210e6, slipMargin: 1, bandStressLimit: 200e6 })).toEqual([
      'stop aboveBandLimit',
      'warn nearSlip',
      'note outsideCommonPractice',
    ]));

  it('put a stop first that is found after a warning: washers too flat, a peak near yield', () =>
    expect(told({ ...quiet, peakStress: 700e6, discDeflection: 0.6e-3 })).toEqual([
      'stop discSpringTooFlat',
      'warn nearYield',
    ]));

  it('give the numbers that each is about', () => {
    const only = (setting: object) => guards({ ...quiet, ...setting })[0]?.values;
    expect(only({ bandStressLimit: 100e6 })).toEqual({ stress: 110e6, limit: 100e6 });
    expect(only({ bandStressLimit: 115e6 })).toEqual({ highest: 120e6, limit: 115e6 });
    expect(only({ millForceLimit: 6000 })).toEqual({ force: 6400, limit: 6000 });
    expect(only({ millForceLimit: 6600 })).toEqual({
      highest: expect.closeTo(6400 * (120 / 110), 6),
      limit: 6600,
    });
    const bearing = { force: 6775, limit: 5420, lifeRatio: 1.25 ** -3 };
    expect(only({ bearingForceLimit: 5420 })).toEqual(bearing);
    const highest = { highest: 900e6, yieldStrength: 1000e6, share: 0.9 };
    expect(only({ peakStress: 890e6, yieldStrength: 1000e6 })).toEqual(highest);
    expect(only({ slipMargin: 1.1 })).toEqual({ slipMargin: 1.1 });
    expect(only({ discDeflection: 0.6e-3, discConeHeight: 0.4e-3 })).toEqual({
      deflection: 0.6e-3,
      limit: expect.closeTo(0.3e-3, 12),
    });
    const friction = { threadFriction: 0.05, selfLockingFriction: 0.07 };
    expect(only({ threadFriction: 0.05 })).toEqual(friction);
    expect(only({ stress: 40e6, expandedUncertainty: 0 })).toEqual({
      stress: 40e6,
      low: 50e6,
      high: 200e6,
    });
    expect(only({ expandedUncertainty: 22e6 })).toEqual({ share: 0.2 });
  });

  it('never fall silent again as the peak rises', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1e6, max: 2e9, noNaN: true }),
        evenly(0, 1e9),
        (peakStress, more) => {
          const severity = (peak: number) =>
            ['warn nearYield', 'stop beyondYieldShare'].indexOf(
              told({ ...quiet, peakStress: peak })[0] ?? '',
            );
          expect(severity(peakStress + more)).toBeGreaterThanOrEqual(severity(peakStress));
        },
      ),
    ));

  it.each([
    'stress',
    'peakStress',
    'yieldStrength',
    'bandStressLimit',
    'millForceLimit',
    'bearingForceLimit',
    'discConeHeight',
  ])('refuse %s of 0', (name) =>
    expect(() => guards({ ...quiet, [name]: 0 })).toThrow(`${name} must be above 0`),
  );

  it.each([
    'expandedUncertainty',
    'wheelForce',
    'rimPull',
    'discDeflection',
    'threadFriction',
    'selfLockingFriction',
  ])('refuse %s below 0', (name) =>
    expect(() => guards({ ...quiet, [name]: -1 })).toThrow(`${name} must be at least 0`),
  );

  it('refuse a slip margin that is no number', () =>
    expect(() => guards({ ...quiet, slipMargin: Number.NaN })).toThrow(
      'slipMargin must be a finite number',
    ));
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  basquinLifeRatio,
  bendsPerHour,
  peakStress,
  stressRange,
  swtLifeRatio,
} from '../../../src/core/wheel/life.ts';
import { evenly } from '../../evenly.ts';

const load = { tight: 4000, area: 32e-6, bendingStress: 400e6, edgeFactor: 1.05 };
const cycle = { peak: 523e6, amplitude: 206.5e6 };

describe('peakStress and stressRange', () => {
  it('are 125 + 420 MPa and 420 + 12.5 MPa, by hand', () => {
    expect(peakStress(load)).toBeCloseTo(545e6, 0);
    expect(stressRange(load, 3600)).toBeCloseTo(432.5e6, 0);
  });

  it('differ by the stress in the slack strand', () =>
    fc.assert(
      fc.property(evenly(0, 4000), (slack) => {
        const between = peakStress(load) - stressRange(load, slack);
        expect(between / 1e6).toBeCloseTo(slack / 32, 6);
      }),
    ));

  it.each(['tight', 'area', 'bendingStress', 'edgeFactor'])('refuse %s of 0', (name) =>
    expect(() => peakStress({ ...load, [name]: 0 })).toThrow(`${name} must be above 0`),
  );

  it('refuse a slack strand tighter than the tight one', () =>
    expect(() => stressRange(load, 4001)).toThrow('slack must be between 0 and 4000 N'));
});

describe('bendsPerHour', () => {
  it('is 45 000 for 25 m/s on a loop of 4 m over two wheels, by hand', () =>
    expect(bendsPerHour({ speed: 25, loopLength: 4 })).toBe(45000));

  it('grows by half with a third wheel, and is nil at rest', () => {
    expect(bendsPerHour({ speed: 25, loopLength: 4, wheels: 3 })).toBe(67500);
    expect(bendsPerHour({ speed: 0, loopLength: 4 })).toBe(0);
  });

  it('refuses what cannot be', () => {
    expect(() => bendsPerHour({ speed: -1, loopLength: 4 })).toThrow(
      'speed must be at least 0 m/s',
    );
    expect(() => bendsPerHour({ speed: 1, loopLength: 0 })).toThrow('loopLength must be above 0 m');
    expect(() => bendsPerHour({ speed: 1, loopLength: 4, wheels: 0 })).toThrow('wheels must be');
  });
});

describe('basquinLifeRatio', () => {
  it('halves eightfold for double stress at exponent 3, by hand', () =>
    expect(basquinLifeRatio(200e6, 100e6, 3)).toBe(1 / 8));

  it.each([
    [0, 1, 9, 'amplitude'],
    [1, 0, 9, 'reference'],
    [1, 1, 0, 'exponent'],
  ] as const)('refuses (%s, %s, %s)', (amplitude, reference, exponent, name) =>
    expect(() => basquinLifeRatio(amplitude, reference, exponent)).toThrow(
      `${name} must be above 0`,
    ),
  );
});

describe('swtLifeRatio', () => {
  it('costs 9 % of life for 11 MPa more tension and 54 % for a tenth more thickness', () => {
    const tension = { peak: 534e6, amplitude: 206.5e6 };
    const thickness = { peak: 564.3e6, amplitude: 227.15e6 };
    expect(swtLifeRatio(tension, cycle, 9)).toBeCloseTo((534 / 523) ** -4.5, 12);
    expect(swtLifeRatio(tension, cycle, 9)).toBeCloseTo(0.91, 2);
    expect(swtLifeRatio(thickness, cycle, 9)).toBeCloseTo(0.46, 2);
  });

  it('is Basquin where peak and amplitude grow together, whatever the exponent', () => {
    const factors = fc.double({ min: 0.5, max: 2, noNaN: true });
    const exponents = fc.double({ min: 6, max: 12, noNaN: true });
    fc.assert(
      fc.property(factors, exponents, (factor, exponent) => {
        const grown = { peak: cycle.peak * factor, amplitude: cycle.amplitude * factor };
        const ratio = swtLifeRatio(grown, cycle, exponent);
        expect(ratio / basquinLifeRatio(factor, 1, exponent)).toBeCloseTo(1, 10);
      }),
    );
  });

  it('refuses what cannot be', () => {
    expect(() => swtLifeRatio({ ...cycle, peak: 0 }, cycle, 9)).toThrow('peak must be above 0 Pa');
    expect(() => swtLifeRatio(cycle, { ...cycle, amplitude: 0 }, 9)).toThrow('amplitude must be');
    expect(() => swtLifeRatio(cycle, cycle, -9)).toThrow('exponent must be above 0');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  centrifugalForce,
  centrifugalShare,
  maxPower,
  runningStrandForce,
  runningWheelForce,
  slipMargin,
  strandsConstantForce,
  strandsUnderPower,
} from '../../../src/core/wheel/running.ts';
import { tensionRatio } from '../../../src/core/wheel.ts';
import { evenly } from '../../evenly.ts';

const band = { massPerLength: 0.28, speed: 25 }; // m·v² = 175 N
const grip = { friction: 0.25, wrap: Math.PI };
const pull = { meanForce: 3800, power: 11000, speed: 25 };

describe('centrifugalShare', () => {
  it('is 0.6 for a band of 6 MN/m on a support of 4 MN/m, by hand', () =>
    expect(centrifugalShare({ bandStiffness: 6e6, supportStiffness: 4e6 })).toBe(0.6));

  it('is 0 on rigid centres and 1 under a constant force', () => {
    const share = (supportStiffness: number) =>
      centrifugalShare({ bandStiffness: 6e6, supportStiffness });
    expect(share(Number.POSITIVE_INFINITY)).toBe(0);
    expect(share(0)).toBe(1);
  });

  it('refuses a slack band and a negative support', () => {
    const stiff = { bandStiffness: 6e6, supportStiffness: 4e6 };
    expect(() => centrifugalShare({ ...stiff, bandStiffness: 0 })).toThrow('bandStiffness must be');
    expect(() => centrifugalShare({ ...stiff, supportStiffness: -1 })).toThrow(
      'supportStiffness must',
    );
  });
});

describe('runningStrandForce and runningWheelForce', () => {
  it('add 0.6 × 175 N to the strand and leave the wheel 2 × (3905 − 175) N, by hand', () => {
    expect(runningStrandForce(3800, 0.6, band)).toBeCloseTo(3905, 9);
    expect(runningWheelForce(3905, band)).toBeCloseTo(7460, 9);
    expect(runningWheelForce(3905, band, Math.PI / 3)).toBeCloseTo(3730, 9);
  });

  it('keep the wheel force under a dead weight, whatever the speed', () =>
    fc.assert(
      fc.property(evenly(0, 60), (speed) => {
        const moving = { massPerLength: 0.28, speed };
        const strand = runningStrandForce(3800, 1, moving);
        expect(runningWheelForce(strand, moving)).toBeCloseTo(7600, 8);
      }),
    ));

  it('go negative where the band lifts off its wheels', () =>
    expect(runningWheelForce(100, band)).toBeLessThan(0));

  it('refuse what cannot be', () => {
    expect(() => runningStrandForce(0, 0.5, band)).toThrow('restForce must be above 0 N');
    expect(() => runningStrandForce(1, 1.1, band)).toThrow('share must be between 0 and 1');
    expect(() => runningWheelForce(0, band)).toThrow('meanForce must be above 0 N');
    expect(() => runningWheelForce(1, band, 2)).toThrow('strandHalfAngle must be below');
    expect(() => centrifugalForce({ ...band, massPerLength: -1 })).toThrow('massPerLength must be');
    expect(() => centrifugalForce({ ...band, speed: -1 })).toThrow('speed must be at least 0 m/s');
  });
});

describe('strandsUnderPower', () => {
  // Shigley, ch. 17, flat metal belt: F₁ = 63.8, F₂ = 48.8 about F_i = 56.3, difference 15 (lbf).
  it('splits the printed metal belt as printed', () => {
    const printed = strandsUnderPower({ meanForce: 56.3, power: 15, speed: 1 });
    expect(printed.tight).toBeCloseTo(63.8, 9);
    expect(printed.slack).toBeCloseTo(48.8, 9);
  });

  it('keeps the sum and carries the power', () =>
    fc.assert(
      fc.property(evenly(0, 150e3), (power) => {
        const { tight, slack } = strandsUnderPower({ ...pull, power });
        expect(tight + slack).toBeCloseTo(7600, 8);
        expect((tight - slack) * 25).toBeCloseTo(power, 6);
      }),
    ));

  it('refuses a cut that would slacken the slack strand', () => {
    expect(() => strandsUnderPower({ ...pull, power: 190e3 })).toThrow('must be below 3800 N');
    expect(() => strandsUnderPower({ ...pull, power: -1 })).toThrow('power must be at least 0 W');
    expect(() => strandsUnderPower({ ...pull, speed: 0 })).toThrow('speed must be above 0 m/s');
    expect(() => strandsUnderPower({ ...pull, meanForce: 0 })).toThrow('meanForce must be above 0');
  });
});

describe('strandsConstantForce', () => {
  it('is 3800 + 175 ± 220 N, by hand', () => {
    const strands = strandsConstantForce({ wheelForce: 7600, power: 11000, band });
    expect(strands.tight).toBeCloseTo(4195, 9);
    expect(strands.slack).toBeCloseTo(3755, 9);
  });

  it('takes more strand force for the same wheel force where the strands lean', () => {
    const leaning = { wheelForce: 3800, power: 11000, band, strandHalfAngle: Math.PI / 3 };
    expect(strandsConstantForce(leaning).tight).toBeCloseTo(4195, 8);
  });

  it('refuses no wheel force', () =>
    expect(() => strandsConstantForce({ wheelForce: 0, power: 1, band })).toThrow(
      'wheelForce must',
    ));
});

describe('slipMargin and maxPower', () => {
  // Khurmi and Gupta, Theory of Machines, example 11.4: 2500 N, μ = 0.25 over 160°, 0.6 m at
  // 200 rpm, mass of the belt left out, carries 7.89 kW.
  it('carry the printed belt drive', () => {
    const wrap = (160 * Math.PI) / 180;
    const slack = 2500 / tensionRatio({ friction: 0.25, wrap });
    const belt = { massPerLength: 0, speed: (Math.PI * 0.6 * 200) / 60 };
    const power = maxPower((2500 + slack) / 2, belt, { friction: 0.25, wrap });
    expect(power / 1000).toBeCloseTo(7.89, 2);
  });

  it('meet: at the largest power the margin is 1', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 0.6, noNaN: true }), (friction) => {
        const hold = { friction, wrap: 3 };
        const strands = strandsUnderPower({ ...pull, power: maxPower(3800, band, hold) });
        expect(slipMargin(strands, band, hold)).toBeCloseTo(1, 9);
      }),
    ));

  it('say that idling is safest, and lifting off is worse than slipping', () => {
    expect(slipMargin({ tight: 3800, slack: 3800 }, band, grip)).toBeCloseTo(
      Math.exp(Math.PI / 4),
      12,
    );
    expect(slipMargin({ tight: 500, slack: 150 }, band, grip)).toBeLessThan(0);
  });

  it('refuse what cannot be', () => {
    expect(() => slipMargin({ tight: 1, slack: 2 }, band, grip)).toThrow('slack must be between 0');
    expect(() => slipMargin({ tight: 170, slack: 1 }, band, grip)).toThrow(
      'centrifugal force must be',
    );
    expect(() => maxPower(170, band, grip)).toThrow('centrifugal force must be below 170 N');
    expect(() => maxPower(0, band, grip)).toThrow('meanForce must be above 0 N');
    expect(() => maxPower(1, band, { ...grip, friction: -1 })).toThrow(
      'friction must be at least 0',
    );
    expect(() => maxPower(1, band, { ...grip, wrap: -1 })).toThrow('wrap must be at least 0 rad');
  });
});

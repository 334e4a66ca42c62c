import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stackStiffness } from '../../../src/core/loop/disc-stack.ts';
import { seriesStiffness } from '../../../src/core/turns.ts';
import { MILLS } from '../../../src/lessons/counting-turns/mills.worked.ts';
import { countingTurns } from '../../../src/lessons/counting-turns/model.ts';
import {
  forceAtTravel,
  gives,
  giveTogether,
} from '../../../src/lessons/counting-turns/nut-travel.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';
import { evenly } from '../../evenly.ts';

/**
 * The worked figures of the invented mills were computed at 40 digits, apart from this code; source: derived here.
 */
const valuesAt = (at: Partial<InputsOf<typeof countingTurns>>) =>
  evaluated(countingTurns, inputsAt(countingTurns, at, 'metric'));
const [STIFF, DISCS, SOFT, OIL] = ['stiffFrame', 'discWashers', 'softSpring', 'oil'] as const;

describe('the worked mills', () => {
  it.each([
    ['a screw on a stiff frame', STIFF, 'jobTurns', 0.490256],
    ['the same, if only the band gave', STIFF, 'bandOnlyTurns', 0.290881],
    ['the same, its torque', STIFF, 'jobTorque', 13.7064],
    ['disc washers', DISCS, 'jobTurns', 2.02382],
    ['disc washers, if only the band gave', DISCS, 'bandOnlyTurns', 0.236838],
    ['disc washers, their torque', DISCS, 'jobTorque', 10.2786],
    ['disc washers, their travel', DISCS, 'jobSpring', 3.34118e-3],
    ['disc washers, the travel of the wheel’s axle and all', DISCS, 'jobTravel', 4.67319e-3],
    ['a long soft spring', SOFT, 'jobTurns', 8.85571],
    ['a long soft spring, if only the band gave', SOFT, 'bandOnlyTurns', 0.181658],
    ['a long soft spring, its torque', SOFT, 'jobTorque', 80.8704],
    ['oil, the travel of its piston', OIL, 'jobTravel', 2.86216e-3],
    ['oil, its pressure pumping up', OIL, 'settingPressure', 10.3053e6],
    ['oil, the pressure of the seal', OIL, 'sealPressure', 0.278521e6],
  ] as const)('%s', (_, tensioner, name, expected) => {
    expect(valuesAt({ tensioner })[name] / expected).toBeCloseTo(1, 5);
  });
  it.each([
    [STIFF, 5.48334e6, 3.2534e6],
    [SOFT, 11.8387e6, 0.242848e6],
    [OIL, 6.95304e6, 4.40227e6],
  ] as const)('band and everything together: %s', (tensioner, band, together) => {
    const { bandStiffness, jobForce, jobTravel } = valuesAt({ tensioner });
    expect(bandStiffness / band).toBeCloseTo(1, 5);
    expect(jobForce / jobTravel / together).toBeCloseTo(1, 5);
  });
  it('washers make the last bit of turning as soft as their tangent: 0.631437 MN/m', () => {
    const mill = MILLS.discWashers;
    const { jobForce, bandStiffness } = valuesAt({ tensioner: DISCS });
    const tangent = stackStiffness(mill.spring.stack, jobForce);
    const together = seriesStiffness([bandStiffness, mill.frameStiffness, tangent]);
    expect(together / 0.631437e6).toBeCloseTo(1, 5);
    // Over the last 1/24 of a turn, a little stiffer than at its end: the washers soften.
    const { jobStiffness } = valuesAt({ tensioner: DISCS });
    expect(jobStiffness / together).toBeGreaterThan(1);
    expect(jobStiffness / together).toBeLessThan(1.01);
    const step = 1e-6;
    const rise = forceAtTravel(mill, giveTogether(mill, jobForce) + step) - jobForce;
    expect(rise / step / together).toBeCloseTo(1, 3);
  });
});

describe('a twenty-fourth of a turn', () => {
  it('is worth 2 to 9 % of the stress on a stiff mill and with washers, half a percent with a soft spring', () => {
    const [stiff, discs, soft] = [STIFF, DISCS, SOFT].map(
      (tensioner) => valuesAt({ tensioner }).clickShare,
    );
    expect(stiff).toBeCloseTo(0.085, 3);
    expect(discs).toBeCloseTo(0.0194, 4);
    expect(soft).toBeCloseTo(0.0047, 4);
  });
});

describe('turning', () => {
  const anyTurns = evenly(0, 3.5);
  const anySlack = evenly(0, 0.003);
  it('spends all of the travel on slack, band, frame and spring', () =>
    fc.assert(
      fc.property(
        anyTurns,
        anySlack,
        fc.constantFrom(STIFF, DISCS, SOFT),
        (turns, slack, tensioner) => {
          const inputs = {
            tensioner,
            slack,
            turnsStiff: turns / 3,
            turnsDiscs: turns,
            turnsSoft: turns,
          };
          const { travel, slackTravel, bandTravel, frameTravel, springTravel } = valuesAt(inputs);
          const sum = slackTravel + bandTravel + frameTravel + springTravel;
          expect(sum).toBeCloseTo(travel, 9);
        },
      ),
    ));
  it('only shows the drag while there is slack', () => {
    const { stress, torque, bandTravel } = valuesAt({ turnsStiff: 0.4, slack: 0.002 });
    expect([stress, bandTravel, torque]).toEqual([0, 0, 0.8]);
  });
  it('reaches the setting after the slack’s turns and the job’s', () => {
    const { totalTurns, setting } = valuesAt({ slack: 0.0015 });
    expect(valuesAt({ slack: 0.0015, turnsStiff: totalTurns }).stress).toBeCloseTo(setting, 0);
  });
  it('gives the same part of the force to every part of the row', () => {
    const mill = MILLS.stiffFrame;
    const { band, frame } = gives(mill, 1000);
    expect(frame * mill.frameStiffness).toBeCloseTo(1000, 6);
    expect(band / frame).toBeCloseTo(8 / 5.48334, 5);
  });
  it('stiffens once the washers lie flat', () => {
    const force = (turnsDiscs: number) =>
      valuesAt({ tensioner: DISCS, slack: 0, turnsDiscs }).wheelForce;
    const { washerShare } = valuesAt({ tensioner: DISCS, slack: 0, turnsDiscs: 3.5 });
    expect(washerShare).toBeCloseTo(1, 9);
    expect(force(3.5) - force(3.45)).toBeGreaterThan(2 * (force(2.05) - force(2)));
  });
});

describe('oil', () => {
  it('shows no slack: the stress is the same with and without', () => {
    const stress = (slack: number) => valuesAt({ tensioner: OIL, slack }).stress;
    expect(stress(0)).toBe(stress(0.003));
  });
  it('does not move below the pressure of the seal', () => {
    const { travel, stress } = valuesAt({ tensioner: OIL, pressure: 0.25e6 });
    expect([travel, stress]).toEqual([0, 0]);
  });
});

describe('the coil spring as it is drawn', () => {
  it('is as stiff as it is said to be: G·d⁴/(8·D³·n), `shigley` 10-3, from memory', () => {
    const { spring } = MILLS.softSpring;
    const { wire, meanDiameter, activeTurns } = spring.coil;
    const stiffness = (79e9 * wire ** 4) / (8 * meanDiameter ** 3 * activeTurns);
    expect(stiffness / spring.stiffness).toBeCloseTo(1, 2);
  });
});

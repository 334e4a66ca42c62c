/**
 * The answers of the worked examples against figures that other code has worked out at 40 digits for the six invented
 * mills (data/derived.json), and against relations worked by hand.
 * Units: SI; those of the mills are in the unit that their name gives.
 */
import { describe, expect, it } from 'vitest';
import { evaluated, inputsAt, numberAt } from '../../src/models/define-model.ts';
import { inputsIn } from '../../src/models/example.ts';
import { exampleOf, told } from '../components/worked/all-examples.ts';
import { derivedCases } from './derived-cases.ts';

/** The same with some inputs as the mill of the case has them. */
function toldAt(key: string, state: string, name: string, inputs: object): number {
  const { example, model } = exampleOf(key);
  const at = { ...inputsIn(example, state), ...inputs };
  return numberAt(evaluated(model, inputsAt(model, at, 'metric')), name);
}

/** The figure of a case. */
function figureOf(name: string): number {
  const found = derivedCases.find((each) => each.name === name);
  if (typeof found?.expected !== 'number') throw new Error(`${name} must be a case`);
  return found.expected;
}

const expectNear = (ours: number, theirs: number, relative = 1e-6) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(relative * Math.abs(theirs));

const MEGA = 1e6;
const MICRO = 1e-6;
const MILLI = 1e-3;

describe('an example tells what other code has worked out:', () => {
  it.each<[what: string, ours: () => number, theirs: string, unit: number, relative?: number]>([
    [
      'the wider band’s torque, A',
      () => told('wider-band', 'old', 'otherTorque'),
      'mill A: wrench for target, from theory (N m)',
      1,
    ],
    [
      'what the first hour takes, A',
      () => -told('slack-by-lunch', 'shade', 'firstLoss'),
      'mill A: stress change, band +15 K, this support (MPa)',
      MEGA,
    ],
    [
      'the measured stress, A',
      () => told('dry-or-not', 'believed', 'measuredStress'),
      'mill A: measured stress at top load (Pa)',
      1,
    ],
    [
      'the screw’s own efficiency, A',
      () => told('dry-or-not', 'believed', 'ownEfficiency'),
      'mill A: own efficiency',
      1,
    ],
    [
      'the agreement once the thread is believed oiled, A',
      () => told('dry-or-not', 'changed', 'lineAgreement'),
      'mill A: E_n',
      1,
      0.06,
    ], // 0.314 for 0.3147
    [
      'turns of the stiff mill, A',
      () => told('quarter-turn', 'stiff', 'jobTurns'),
      'mill A: turns, zero tension to target',
      1,
    ],
    [
      'the stress that those turns give on the stiff frame, A',
      () =>
        toldAt('soft-frame', 'stiff', 'stress', {
          turns: figureOf('mill A: turns, zero tension to target'),
        }),
      'mill A: target sigma (MPa)',
      MEGA,
    ],
    [
      'power at slip on a clean rim, A',
      () => toldAt('wet-band-slips', 'clean', 'slipPower', { stress: 110e6 }),
      'mill A: power at slip (kW)',
      1e3,
    ],
    [
      'the free strand’s note, A',
      () => told('pluck-settles-it', 'slack', 'strandPitch'),
      'mill A: pitch, free strand wheel to wheel (Hz)',
      1,
    ],
    [
      'everyday efficiency, B',
      () => told('greased-screw', 'usual', 'efficiency'),
      'mill B: e efficiency, tighten',
      1,
    ],
    [
      'the stress by the dial, B',
      () =>
        toldAt('stretch-to-stress', 'read', 'stretch', {
          stretch: (figureOf('mill B: target sigma (MPa)') * MEGA * 0.4572) / 205e9,
        }),
      'mill B: expected dial dL (um)',
      MICRO,
    ],
    [
      'the bend on the smaller wheel, C',
      () => told('two-wheels', 'small', 'bending'),
      'mill C: sigma_b smaller wheel (MPa)',
      MEGA,
    ],
    [
      'the setting’s pressure, D',
      () => told('stuck-seal', 'pumped', 'settingPressure'),
      'mill D: pressure for target, pumping up (MPa)',
      MEGA,
    ],
    [
      'the seal’s pressure, D',
      () => told('stuck-seal', 'pumped', 'sealPressure'),
      'mill D: pressure equal to seal friction (MPa)',
      MEGA,
    ],
    [
      'the V thread’s efficiency, E',
      () => told('v-thread', 'hobsend', 'efficiency'),
      'mill E: e efficiency, tighten',
      1,
    ],
    [
      'the V thread’s thrust, E',
      () => told('v-thread', 'hobsend', 'thrust'),
      'mill E: Q screw thrust (N)',
      1,
    ],
    [
      'turns of the soft mill, F',
      () => told('quarter-turn', 'soft', 'jobTurns'),
      'mill F: turns, zero tension to target',
      1,
    ],
    [
      'friction at which the steep thread holds, F',
      () => told('ball-bearing', 'plain', 'holdingFriction'),
      'mill F: mu needed to self-lock (thread alone)',
      1,
    ],
    [
      'the climb of the steep thread, F',
      () => told('ball-bearing', 'plain', 'leadAngle') * (180 / Math.PI),
      'mill F: lambda lead angle (deg)',
      1,
    ],
    [
      'the wooden bar in a little sun, F',
      () => told('wood-in-the-sun', 'little', 'feignedStress'),
      'mill F: false stress, band and bar +3 K (MPa)',
      MEGA,
    ],
  ])('%s', (_, ours, theirs, unit, relative) =>
    expectNear(ours(), figureOf(theirs) * unit, relative),
  );
});

describe('an example tells what can be worked by hand:', () => {
  it('five times 0.2 mm off 20 mm raise the stress by 20/19', () => {
    expectNear(told('five-sharpenings', 'narrow', 'sharpenedStress'), (110 * MEGA * 20) / 19);
    expectNear(told('five-sharpenings', 'narrow', 'sharpenedWidth'), 19 * MILLI);
  });
  it('one strand forgotten is half the stress, and the wheel’s force is that of one strand', () => {
    const [wanted, forgotten] = ['wanted', 'forgotten'].map((state) =>
      told('one-strand', state, 'targetStress'),
    ) as [number, number];
    expectNear(wanted, 2 * forgotten);
    expectNear(
      told('one-strand', 'forgotten', 'wheelForce'),
      told('one-strand', 'wanted', 'strandForce'),
    );
  });
  it('0.29 mm over 457.2 mm of steel are 205 GPa times that: 130.03 MPa', () =>
    expectNear(told('stretch-to-stress', 'read', 'stress'), 130.03 * MEGA, 1e-4));
  it('the hand went back from 3.11 mm past zero to 2.83 mm, though its mark is the higher one', () => {
    expectNear(told('back-past-nought', 'back', 'moved'), 0.28 * MILLI);
    expect(told('back-past-nought', 'back', 'markNow')).toBeGreaterThan(
      told('back-past-nought', 'back', 'markBefore'),
    );
    expectNear(told('back-past-nought', 'changed', 'moved'), 1.18 * MILLI);
  });
  it('a zero set on the slack band counts the curl as stretch, and says too much', () => {
    const [shown, stretch, curl] = ['dialFromSlack', 'stretch', 'straightened'].map((name) =>
      told('slack-zero', 'top', name),
    ) as [number, number, number];
    expectNear(shown, stretch + curl);
    expect(told('slack-zero', 'top', 'slackStress')).toBeGreaterThan(
      2 * told('slack-zero', 'top', 'stress'),
    );
  });
  it('steel that was let go below its limit keeps nothing, above it something', () => {
    expect(told('pulled-too-far', 'changed', 'leftStretch')).toBe(0);
    expect(told('pulled-too-far', 'far', 'leftStretch')).toBeGreaterThan(0);
  });
  it('the square of the notes goes nearly as the stress, a little less because the band is stiff', () => {
    const [low, high] = ['slack', 'tight'].map((state) =>
      told('pluck-settles-it', state, 'pitch'),
    ) as [number, number];
    expect((high / low) ** 2).toBeGreaterThan(1.6);
    expect((high / low) ** 2).toBeLessThan(140 / 80);
  });
});

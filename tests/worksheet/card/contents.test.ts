/** What the card says beside its torques: how sure it is, the ways of setting, and what the makers allow. */
import { describe, expect, it } from 'vitest';
import { evaluateWorksheet, loadName, type Worksheet } from '../../../src/core/worksheet.ts';
import {
  dialRunsWords,
  limitWords,
  verdictWords,
  wayLines,
} from '../../../src/worksheet/card/contents.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { whichTorque } from '../../../src/worksheet/words/advice-words.ts';
import { millD } from '../../core/worksheet/fixtures/hydraulic-mill.ts';
import { millA } from '../../core/worksheet/fixtures/mills.ts';
import { aiming, plain, shown, unread } from './invented.ts';

describe('beside the torque', () => {
  it('stands how sure it is', () => {
    expect(verdictWords(evaluateWorksheet(millA), false)).toBe('measured; the calculation agrees');
    expect(verdictWords(evaluateWorksheet(unread), false)).toBe('calculated, not measured');
    expect(verdictWords(evaluateWorksheet(millA), true)).toBe(
      'measured; calculation roughly agrees',
    );
  });

  it('stands which way the dial goes, and the slack that it shows first where that was seen', () => {
    const results = evaluateWorksheet(millA);
    const { zero } = results;
    if (!zero.ready) throw new Error('the mill has a zero');
    const seen = { zero: { ...zero, zero: 30e-6, low: 10e-6 } };
    expect(plain(dialRunsWords(true, seen, shown))).toBe('falls; 0.030 mm of slack first');
    const perhaps = { zero: { ...zero, low: -1e-6 } };
    expect(dialRunsWords(false, perhaps, shown)).toBe('rises as it stretches');
    const several = { zero: { ...seen.zero, zeros: [...zero.zeros, ...zero.zeros] } };
    expect(dialRunsWords(true, several, shown)).toBe('falls as it stretches');
    expect(dialRunsWords(undefined, seen, shown)).toBe('');
  });

  it('stands which of two torques to use', () => {
    expect(whichTorque(evaluateWorksheet(millA), shown)).toMatch(
      /^Use the torque from your readings/,
    );
    expect(whichTorque(evaluateWorksheet(unread), shown)).toMatch(/^Until you have readings/);
    const target = { ...millA.target, stress: undefined };
    expect(whichTorque(evaluateWorksheet({ ...millA, target }), shown)).toBeUndefined();
  });

  it('stand the ways whose stress is known, and none that the makers forbid', () => {
    const way = (name: string, torque: number) => ({ name, torque, readings: [] });
    const ways = [way('mark', 10), way('', 14), way('slack', 0.5)];
    const limited = { ...aiming(60e6, { makerLimitStress: 90e6 }), ways };
    const lines = wayLines(evaluateWorksheet(limited), shown, [10, 14, undefined]);
    expect(lines.map(({ at }) => plain(at))).toEqual([' at 10.0 N·m', ' at 14.0 N·m']);
    expect(lines.map(({ name, value }) => [name, plain(value)])).toEqual([
      ['mark', expect.stringMatching(/^7\d ± \d+ MPa$/)],
      ['Way 2', 'do not use'],
    ]);
  });
});

describe('what the makers allow', () => {
  const limited = (target: Partial<Worksheet['target']>, mill: Worksheet = millA) => {
    const worksheet = { ...mill, target: { ...mill.target, ...target } };
    const { allowedLoad } = evaluateWorksheet(worksheet);
    const load = shownIn('metric', loadName(mill.tensioner));
    return { allowedLoad, says: plain(limitWords(worksheet.target, allowedLoad, load)) };
  };
  const none = { makerLimitStress: undefined, makerLimitWheelForce: undefined };
  const torqueIn = (says = '') => Number(/above ([\d.]+) /.exec(says)?.[1]);

  it('is the torque not to pass, never rounded up, and the number that they give', () => {
    for (const limit of [80e6, 83e6, 87e6, 91e6]) {
      const { allowedLoad, says } = limited({ ...none, makerLimitStress: limit });
      expect(says).toMatch(/^Not above [\d.]+ N·m: the makers allow [\d.]+ MPa\.$/);
      expect(torqueIn(says)).toBeLessThanOrEqual(allowedLoad?.load ?? 0);
      expect(torqueIn(says)).toBeGreaterThan((allowedLoad?.load ?? 0) - 0.1);
    }
  });

  it('is said to be beyond the readings, or calculated', () => {
    const far = { ...none, makerLimitStress: 170e6, makerLimitWheelForce: 12000 };
    expect(limited(far).says).toMatch(
      /^Not above [\d.]+ N·m \(beyond the readings\): the makers allow 170 MPa and 12 000 N on the wheel\.$/,
    );
    expect(limited(far, unread).says).toMatch(/^Not above [\d.]+ N·m \(calculated\): /);
    expect(limited({ ...none, makerLimitStress: 300e6 }, millD).says).toMatch(
      /^Not above \d+ bar \(beyond the readings\): /,
    );
  });

  it('says that a torque above it may pass the limit, and calls for none on the other side of it', () => {
    const known = { ...millA.target, ...none, makerLimitStress: 112e6 };
    const { allowedLoad } = evaluateWorksheet({ ...millA, target: known });
    const load = allowedLoad?.load ?? Number.NaN;
    const says = (set: number) => plain(limitWords(known, allowedLoad, shown, set));
    expect(says(1.1 * load)).toMatch(
      /^Above [\d.]+ N·m the stress may pass the 112 MPa that the makers allow\.$/,
    );
    expect(says(0.9 * load)).toMatch(/^Not above/);
  });

  it('is their number alone where no torque is known, and nothing without one', () => {
    const { target } = millA;
    const known = { ...target, ...none, makerLimitStress: 170e6 };
    expect(plain(limitWords(known, undefined, shown))).toBe('The makers allow 170 MPa.');
    expect(limitWords({ ...target, ...none }, undefined, shown)).toBe('');
  });
});

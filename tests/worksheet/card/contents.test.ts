/** What the card says beside its torques: how sure it is, the ways of setting, and what the sheet warns of. */
import { describe, expect, it } from 'vitest';
import { evaluateWorksheet, type Worksheet } from '../../../src/core/worksheet.ts';
import {
  cardWarnings,
  dialRunsWords,
  ownBandCalled,
  slackSeen,
  verdictWords,
  wayLines,
} from '../../../src/worksheet/card/contents.ts';
import { whichTorque } from '../../../src/worksheet/words/advice-words.ts';
import { millA } from '../../core/worksheet/fixtures/mills.ts';
import { aiming, plain, shown, unread } from './invented.ts';

describe('beside the torque', () => {
  it('stands how sure it is', () => {
    expect(verdictWords(evaluateWorksheet(millA), false)).toBe('measured; calculation agrees');
    expect(verdictWords(evaluateWorksheet(unread), false)).toBe('calculated, not measured');
    expect(verdictWords(evaluateWorksheet(millA), true)).toBe('measured');
  });

  it('stands which way the dial goes, and what of that is slack', () => {
    expect(dialRunsWords(true, undefined)).toBe('falls as it stretches');
    expect(plain(dialRunsWords(false, '0.030 mm'))).toBe('rises; the first 0.030 mm was slack');
    expect(dialRunsWords(undefined, '0.030 mm')).toBe('');
  });

  it('stands the slack that the dial shows first where that was seen in one series', () => {
    const { zero } = evaluateWorksheet(millA);
    if (!zero.ready) throw new Error('the mill has a zero');
    const seen = { zero: { ...zero, zero: 30e-6, low: 10e-6 } };
    expect(plain(slackSeen(seen, shown) ?? '')).toBe('0.030 mm');
    expect(slackSeen({ zero: { ...zero, low: -1e-6 } }, shown)).toBeUndefined();
    const several = { zero: { ...seen.zero, zeros: [...zero.zeros, ...zero.zeros] } };
    expect(slackSeen(several, shown)).toBeUndefined();
  });

  it('stands “measured” of the band on the mill only where it was', () => {
    expect(ownBandCalled(evaluateWorksheet(millA))).toBe('measured band');
    expect(ownBandCalled(evaluateWorksheet(unread))).toBe('band on the mill');
  });

  it('stands the warning to lock the screw once, however many bands there are', () => {
    const worksheet = aiming(100e6);
    const friction = {
      ...worksheet.tensioner.friction,
      kind: 'friction',
      low: 0.05,
      high: 0.1,
    } as const;
    const slippery = { ...worksheet, tensioner: { ...worksheet.tensioner, friction } };
    const warnings = cardWarnings(evaluateWorksheet(slippery), shown);
    expect(worksheet.bands).toHaveLength(1);
    expect(warnings.filter((warning) => warning.includes('Lock the screw'))).toHaveLength(1);
  });

  it('stands which of two torques to use', () => {
    expect(whichTorque(evaluateWorksheet(millA), shown)).toMatch(
      /^Use the torque from your readings/,
    );
    expect(whichTorque(evaluateWorksheet(unread), shown)).toMatch(/^Until you have readings/);
    const target = { ...millA.target, stress: undefined };
    expect(whichTorque(evaluateWorksheet({ ...millA, target }), shown)).toBeUndefined();
  });

  it('stand the warnings of few other bands in full, by their names, and many bands by their names alone', () => {
    const [other] = millA.bands;
    const thick = (bodyWidth: number) => (name: string) => ({
      ...{ name, bodyWidth, thickness: 1.4e-3 },
      targetStress: other?.targetStress,
    });
    const steel = { yieldStrength: 900e6 };
    const warnedOf = (bands: Worksheet['bands']) => {
      const worksheet = { ...aiming(100e6, steel), bands };
      return cardWarnings(evaluateWorksheet(worksheet), shown).map(plain).join(' ');
    };
    const warned = (...names: readonly string[]) => warnedOf(names.map(thick(0.02)));
    expect(warned('thick one')).toMatch(
      /thick one: Bent over the wheel, the steel may reach [\d.]+ %/,
    );
    expect(warned('thick one')).not.toContain('Read the sheet');
    expect(warnedOf([thick(0.03)('not to be used yet')])).not.toContain('Bent over the wheel');
    expect(warned('one', 'two', 'three')).toContain(
      'Read the sheet’s warnings before you set these: one, two, three.',
    );
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

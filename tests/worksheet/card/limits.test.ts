/** What the makers allow, on the card: a sentence for the measured band, a row for another. */
import { describe, expect, it } from 'vitest';
import { evaluateWorksheet, loadName, type Worksheet } from '../../../src/core/worksheet.ts';
import { limitRow, limitWords } from '../../../src/worksheet/card/limits.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { millD } from '../../core/worksheet/fixtures/hydraulic-mill.ts';
import { millA } from '../../core/worksheet/fixtures/mills.ts';
import { plain, shown, unread } from './invented.ts';

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

describe('what another band should not pass', () => {
  const limits = { makerLimitStress: 118e6, makerLimitWheelForce: undefined };
  const said = (allowed: number | undefined, set = 11, target = limits) =>
    limitRow(target, { allowed, set }, shown)?.map(plain);

  it('is the load, rounded down, with the limit', () =>
    expect(said(12.39)).toEqual(['Not above, for 118 MPa', '12.3 N·m']));

  it('is said otherwise where more is set than may be safe', () =>
    expect(said(10.8)?.[0]).toBe('May pass 118 MPa above'));

  it('names a force on the wheel', () => {
    const ofMill = { makerLimitStress: undefined, makerLimitWheelForce: 9000 };
    expect(plain(limitRow(ofMill, { allowed: 12.39, set: 11 }, shown)?.[0])).toBe(
      'Not above, for 9000 N on the wheel',
    );
  });

  it('is nothing where none is known', () => expect(said(undefined)).toBeUndefined());
});

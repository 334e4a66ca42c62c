/** What stands before a torque in part 8: the one by the screw alone is never larger than the one by the readings. */
import { describe, expect, it } from 'vitest';
import { evaluateWorksheet, type Worksheet } from '../../../src/core/worksheet.ts';
import {
  beforeByReadings,
  beforeByScrew,
} from '../../../src/worksheet/compare/provisional-words.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { numbersOf } from '../../core/fixtures/ready.ts';
import { millA } from '../../core/worksheet/fixtures/mills.ts';
import { stretched } from '../../core/worksheet/fixtures/stretched.ts';

const plain = (text?: string) => text?.replace(/[\u00a0\u202f]/g, ' ');

function before(worksheet: Worksheet) {
  const results = evaluateWorksheet(worksheet);
  const sheet = {
    result: <Name extends keyof typeof results>(name: Name) => results[name],
    shown: () => shownIn('metric'),
  };
  return [
    plain(beforeByReadings(numbersOf(results.setting), sheet)),
    plain(beforeByScrew(results.setting, sheet)),
  ];
}

const aimingAt = (stress: number): Worksheet => ({
  ...millA,
  target: { ...millA.target, stress },
});

describe('before the torques for the target', () => {
  it('stands what to measure first where they are above the readings', () =>
    expect(before(millA)).toEqual(['Provisional. Measure up to 14.9 N·m first.', 'Only a check.']));

  it('stands nothing within the readings', () =>
    expect(before(aimingAt(100e6))).toEqual([undefined, undefined]));

  it('stands “Not yet” of both where the two are apart', () =>
    expect(before(stretched(aimingAt(100e6), 0.4))).toEqual(['Not yet.', 'Not yet.']));

  it('stands nothing before the one by the screw while there are no readings', () => {
    const results = evaluateWorksheet({ ...millA, readings: [] });
    const sheet = {
      result: <Name extends keyof typeof results>(name: Name) => results[name],
      shown: () => shownIn('metric'),
    };
    expect(results.theorySetting.ready).toBe(true);
    expect(beforeByScrew(results.setting, sheet)).toBeUndefined();
  });
});

/** What the card says: the best torque there is, how far it can be relied on, and every warning once. */
import { describe, expect, it } from 'vitest';
import { evaluateWorksheet, loadName, type Worksheet } from '../../../src/core/worksheet.ts';
import {
  bandLines,
  cardWarnings,
  emptyWords,
  firstWords,
  ownSetting,
  verdictWords,
  wayLines,
} from '../../../src/worksheet/card/contents.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { bandDialAndTurns, whichTorque } from '../../../src/worksheet/words/advice-words.ts';
import { LOAD } from '../../../src/worksheet/words/load-words.ts';
import { numbersOf } from '../../core/fixtures/ready.ts';
import { millD } from '../../core/worksheet/fixtures/hydraulic-mill.ts';
import { millA, millB } from '../../core/worksheet/fixtures/mills.ts';
import { stretched } from '../../core/worksheet/fixtures/stretched.ts';

const shown = shownIn('metric');
const plain = (text: string | undefined) => text?.replace(/[\u00a0\u202f]/g, ' ');
const aiming = (stress: number, more: Partial<Worksheet['target']> = {}): Worksheet => ({
  ...millA,
  target: { ...millA.target, ...more, stress },
});
const unread: Worksheet = { ...millA, readings: [] };
const firstOf = (worksheet: Worksheet) => {
  const results = evaluateWorksheet(worksheet);
  const setting = ownSetting(results, shown);
  return plain(setting && firstWords(setting, results, shown));
};
const settingOf = (worksheet: Worksheet) => ownSetting(evaluateWorksheet(worksheet), shown);

describe('the torque of the card', () => {
  it('is that by the readings, with its ranges and the dial', () => {
    const setting = settingOf(aiming(100e6));
    expect(setting?.trust).toBe('measured');
    expect(plain(setting?.torque)).toBe('13.6 N·m');
    expect(plain(setting?.needs)).toMatch(/^\d+\.\d to \d+\.\d N·m$/);
    expect(plain(setting?.gives)).toMatch(/^100 ± \d+ MPa$/);
    expect(plain(setting?.dial)).toBe('0.195 mm');
  });

  it('is provisional above the readings, and says up to where to measure', () => {
    expect(settingOf(millA)?.trust).toBe('provisional');
    expect(firstOf(millA)).toBe('Provisional: measure up to 14.9 N·m first.');
    expect(firstOf(aiming(100e6))).toBeUndefined();
  });

  it.each([
    [millA, 0.4],
    [millB, 3],
    [millD, 1 / 3],
  ])(
    'is not for setting yet where the two do not agree, and says so once, what to do first',
    (mill, factor) => {
      const apart = stretched(mill, factor);
      const results = evaluateWorksheet(apart);
      const load = shownIn('metric', loadName(apart.tensioner));
      const setting = ownSetting(results, load);
      expect(setting?.trust).toBe('not yet');
      const first = plain(setting && firstWords(setting, results, load));
      const { topTorque } = numbersOf(results.measured);
      const top = plain(load.quantity(topTorque, load.load.name));
      expect(first).toBe(
        `Find out first why theory and measurement disagree: see the checks in part 6. Until then set nothing above ${top}, your highest reading.`,
      );
      const rest = [...cardWarnings(results, load), verdictWords(results, false)].join(' ');
      expect(rest).not.toMatch(/agree/);
    },
  );

  it('warns of the disagreement where it has no torque of its own to say it of', () => {
    const apart = stretched(millA, 0.4);
    const aimless = { ...apart, target: { ...apart.target, stress: undefined } };
    expect(cardWarnings(evaluateWorksheet(aimless), shown)).toEqual([
      expect.stringMatching(/^Find out first why/),
    ]);
  });

  it('is rough where the measurement is, and says so', () => {
    const readings = millA.readings.filter((_, row) => row > 3); // the low ones are not there
    const results = evaluateWorksheet({ ...aiming(100e6), readings });
    expect(results.verdict).toEqual({
      grade: 'rough',
      reasons: expect.arrayContaining(['startsHigh']),
    });
    expect(ownSetting(results, shown)?.trust).toBe('rough');
    expect(firstOf({ ...aiming(100e6), readings })).toContain('Rough');
    expect(verdictWords(results, false)).toMatch(/^measured, roughly/);
  });

  it('is that by the screw alone without readings, and says so', () => {
    const setting = settingOf(unread);
    expect(setting?.trust).toBe('calculated');
    expect(plain(setting?.torque)).toBe('13.7 N·m');
    expect(firstOf(unread)).toContain('measure once');
  });

  it('waits for a doubtful row of a rough series, and for a lower target where a limit may be passed', () => {
    const readings = millA.readings.map((reading, row) =>
      row === 6 ? { ...reading, dial: (reading.dial ?? 0) + 0.1e-3 } : reading,
    );
    const doubtful = { ...aiming(100e6), readings };
    expect(settingOf(doubtful)?.trust).toBe('not yet');
    expect(firstOf(doubtful)).toBe('Not yet: check row 7 first.');
    const near = aiming(115e6, { makerLimitStress: 118e6 });
    expect(settingOf(near)?.trust).toBe('not yet');
    expect(firstOf(near)).toBe('Not yet: choose a lower target.');
  });

  it('is none where a rail stops it, or where nothing is known', () => {
    const stopped = aiming(110e6, { makerLimitStress: 100e6 });
    expect(settingOf(stopped)).toBeUndefined();
    expect(emptyWords(evaluateWorksheet(stopped), LOAD.torque)).toBe('No setting is given.');
    const aimless = { ...millA, target: { ...millA.target, stress: undefined } };
    expect(settingOf(aimless)).toBeUndefined();
    expect(emptyWords(evaluateWorksheet(aimless), LOAD.torque)).toMatch(/^No setting yet/);
  });
});

describe('the other bands of the card', () => {
  const [first] = millA.bands;
  const bands = [
    { ...first, name: 'narrow', bodyWidth: 0.0265, thickness: 0.9e-3, targetStress: 105e6 },
    { name: '', bodyWidth: 0.04, thickness: 1.1e-3, targetStress: 105e6 },
    { name: 'stopped', bodyWidth: 0.02, thickness: 1e-3, targetStress: 119e6 },
    { name: 'half filled', bodyWidth: 0.02, thickness: undefined, targetStress: 105e6 },
  ];
  const results = () => evaluateWorksheet({ ...aiming(100e6, { makerLimitStress: 118e6 }), bands });

  it('have their torques by their names, and no setting where one is stopped', () => {
    const lines = bandLines(results(), shown, bands);
    expect(lines.map(({ name, setting }) => [name, setting?.trust])).toEqual([
      ['narrow', 'measured'],
      ['Other band 2', 'not yet'], // above the readings, and it may pass the limit
      ['stopped', undefined],
    ]);
    const unlimited = bandLines(evaluateWorksheet({ ...aiming(100e6), bands }), shown, bands);
    expect(unlimited[1]?.setting?.trust).toBe('provisional');
    expect(plain(lines[0]?.setting?.torque)).toBe('11.9 N·m');
    expect(plain(lines[0]?.size)).toBe('26.5 mm × 0.9 mm');
  });

  it('are warned of in one sentence, by their names', () => {
    const warnings = cardWarnings(results(), shown);
    const sentence = 'Read the sheet’s warnings before you set these: ';
    expect(warnings).toContain(`${sentence}narrow, Other band 2, stopped.`);
    expect(warnings.filter((warning) => warning.startsWith('Other band'))).toEqual([]);
    expect(new Set(warnings).size).toBe(warnings.length);
  });

  it('tell dial and turns as far as they are known', () => {
    const [band] = evaluateWorksheet(millA).bands;
    if (!band) throw new Error('the mill has another band');
    const words = plain(bandDialAndTurns(band, shown));
    expect(words).toMatch(
      /^The dial should move 0\.205 mm from zero tension\. By turns: tighten to .* N·m, mark the handle there, then turn it .* more\.$/,
    );
    const none = { ready: false, waitsFor: [] } as const;
    expect(bandDialAndTurns({ stretch: none, turns: none }, shown)).toBe('');
  });
});

describe('beside the torque', () => {
  it('stands how sure it is', () => {
    expect(verdictWords(evaluateWorksheet(millA), false)).toBe('measured; theory agrees');
    expect(verdictWords(evaluateWorksheet(unread), false)).toBe('calculated, not measured');
    expect(verdictWords(evaluateWorksheet(millA), true)).toBe('measured; theory too vague');
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

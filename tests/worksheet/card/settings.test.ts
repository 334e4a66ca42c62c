/** The torques of the card: the best there is of each band, how far it can be relied on, and what to do first. */
import { describe, expect, it } from 'vitest';
import {
  emptyWorksheet,
  evaluateWorksheet,
  loadName,
  type Worksheet,
} from '../../../src/core/worksheet.ts';
import { cardWarnings, emptyWords, verdictWords } from '../../../src/worksheet/card/contents.ts';
import {
  bandLines,
  numberAndUnit,
  ownBand,
  ownSetting,
} from '../../../src/worksheet/card/settings.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { bandDialAndTurns } from '../../../src/worksheet/words/advice-words.ts';
import { LOAD } from '../../../src/worksheet/words/load-words.ts';
import { numbersOf } from '../../core/fixtures/ready.ts';
import { millD } from '../../core/worksheet/fixtures/hydraulic-mill.ts';
import { millA, millB } from '../../core/worksheet/fixtures/mills.ts';
import { stretched } from '../../core/worksheet/fixtures/stretched.ts';
import { aiming, plain, shown, unread } from './invented.ts';

const settingOf = (worksheet: Worksheet) => ownSetting(evaluateWorksheet(worksheet), shown);
const firstOf = (worksheet: Worksheet) => plain(settingOf(worksheet)?.first);

describe('the torque of the card', () => {
  it('is that by the readings, with its ranges and the dial', () => {
    const setting = settingOf(aiming(100e6));
    expect(setting?.trust).toBe('measured');
    expect(plain(setting?.torque)).toBe('13.6 N·m');
    expect(plain(setting?.needs)).toMatch(/^\d+\.\d to \d+\.\d N·m$/);
    expect(plain(setting?.gives)).toMatch(/^100 ± \d+ MPa$/);
    expect(plain(setting?.dial)).toBe('0.195 mm');
  });

  it('is provisional above the readings, and not to be used yet', () => {
    expect(settingOf(millA)?.trust).toBe('provisional');
    expect(firstOf(millA)).toBe('Do not use yet.');
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
      const first = plain(setting?.first);
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
  const { target: limited } = aiming(100e6, { makerLimitStress: 118e6 });
  const results = () => evaluateWorksheet({ ...aiming(100e6), target: limited, bands });

  it('have their torques by their names, and no setting where one is stopped', () => {
    const lines = bandLines(results(), shown, { target: limited, bands });
    expect(lines.map(({ name, setting }) => [name, setting?.trust])).toEqual([
      ['narrow', 'measured'],
      ['Other band 2', 'not yet'], // above the readings, and it may pass the limit
      ['stopped', undefined],
    ]);
    const unlimited = bandLines(evaluateWorksheet({ ...aiming(100e6), bands }), shown, {
      ...aiming(100e6),
      bands,
    });
    expect(unlimited[1]?.setting?.trust).toBe('provisional');
    expect(plain(lines[0]?.setting?.torque)).toBe('11.9 N·m');
    expect(plain(lines[0]?.size)).toBe('26.5 mm back to gullet × 0.9 mm');
  });

  it('have their own torque not to pass, by the limit of the measured band, unless they are held back', () => {
    const [narrow, heldBack] = bandLines(results(), shown, { target: limited, bands });
    expect(narrow?.limit?.map(plain)).toEqual([
      'May pass 118 MPa above',
      expect.stringMatching(/^1[12]\.\d N·m$/),
    ]);
    expect(heldBack?.limit).toBeUndefined();
    const unlimited = { ...aiming(100e6), bands };
    expect(bandLines(evaluateWorksheet(unlimited), shown, unlimited)[0]?.limit).toBeUndefined();
  });

  it('say in short what to do first', () => {
    const firsts = (worksheet: Worksheet) =>
      bandLines(evaluateWorksheet(worksheet), shown, worksheet).map(({ setting }) =>
        plain(setting?.first),
      );
    const two = { ...aiming(100e6), bands: bands.slice(0, 2) };
    expect(firsts(two)).toEqual([undefined, 'Do not use yet.']);
    expect(firsts({ ...two, readings: [] })).toEqual([
      'Calculated, not measured.',
      'Calculated, not measured.',
    ]);
    expect(firsts({ ...stretched(millA, 0.4), bands: two.bands })).toEqual([
      'Not yet.',
      'Not yet.',
    ]);
    const readings = millA.readings.filter((_, row) => row > 3);
    expect(firsts({ ...two, readings })[0]).toBe('Rough: go by the range.');
  });

  it('stand beside the measured one, which has its size and no name', () => {
    const { name, size, setting } = ownBand(results(), shown, { target: limited, bands });
    expect([name, plain(size)]).toEqual(['', '29 mm back to gullet × 1 mm']);
    expect(plain(setting?.torque)).toBe('13.6 N·m');
    expect(ownBand(evaluateWorksheet(emptyWorksheet), shown, emptyWorksheet)).toEqual({
      name: '',
      size: '',
    });
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

describe('a torque in large numerals', () => {
  it('has its unit apart, with the space before it', () => {
    expect(numberAndUnit(shown.quantity(13.6, 'torque'))).toEqual(['13.6', '\u202fN·m']);
    const [number, unit] = numberAndUnit(shownIn('us').quantity(90e6, 'stress'));
    expect([plain(number), plain(unit)]).toEqual(['13 100', ' psi']);
    expect(numberAndUnit('STOP')).toEqual(['STOP', '']);
  });
});

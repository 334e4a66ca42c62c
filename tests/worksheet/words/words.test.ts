/** Sentences of the worksheet: with their numbers, in both unit systems, for every code. */
import { describe, expect, it } from 'vitest';
import { pathInColumn } from '../../../src/worksheet/state/keys.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { budgetName } from '../../../src/worksheet/words/budget-words.ts';
import { guardSentence } from '../../../src/worksheet/words/guard-words.ts';
import { refusalSentence } from '../../../src/worksheet/words/refusal-words.ts';
import { stepSentence } from '../../../src/worksheet/words/undo-words.ts';
import { boxName, waitingFor } from '../../../src/worksheet/words/waiting-words.ts';

const [metric, us] = [shownIn('metric'), shownIn('us')];
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

describe('sentences', () => {
  it('carry the reader’s numbers in the reader’s units', () => {
    const refusal = { code: 'belowDrag', values: { torque: 1, dragTorque: 2 } } as const;
    expect(plain(refusalSentence(refusal, metric))).toContain('1.00 N·m');
    expect(plain(refusalSentence(refusal, us))).toContain('0.738 ft·lbf');
  });

  it('tell the other band apart, and rows from one on', () => {
    const odd = { code: 'oddRow', level: 'warn', inputs: [] } as const;
    expect(guardSentence({ ...odd, values: { row: 6, off: -0.1e-3 } }, metric)).toMatch(
      /^Check row 7 for a wrong digit or a slipped clamp: it shows 0\.100\smm less stretch/,
    );
    const guard = { code: 'missedDialTurn', level: 'warn', inputs: [] } as const;
    expect(guardSentence({ ...guard, values: { row: 3, turns: 1 } }, metric)).toMatch(
      /a whole turn short from row 4 on\. .*put 1 turn more from row 4 on\.$/,
    );
    expect(guardSentence({ ...guard, values: { row: 3, turns: -1, isAlone: 1 } }, metric)).toMatch(
      /a whole turn too far in row 4\. .*put 1 turn less in row 4\.$/,
    );
    const wide = { code: 'wideUncertainty', level: 'note', values: { share: 0.2 } } as const;
    expect(guardSentence({ ...wide, inputs: ['bands.1.targetStress'] }, us)).toMatch(
      /^Other band 2: The stress could be off by 20 %/,
    );
  });

  it('name the row where the dial went back, by load and dial of this mill', () => {
    const fall = { code: 'dialFalls', level: 'warn', inputs: [] } as const;
    const values = { row: 4, back: 30e-6 };
    expect(plain(guardSentence({ ...fall, values }, shownIn('metric', 'pressure')))).toMatch(
      /^Read row 5 again: the pressure rose and the dial went back by 0\.030 mm\. /,
    );
    expect(plain(guardSentence({ ...fall, values }, us))).toMatch(/torque rose .* 0\.001\d* in\./);
  });

  it('say of a target beyond the window what it costs', () => {
    const guard = { level: 'warn', inputs: ['target.stress'] } as const;
    const above = (values: Record<string, number>) =>
      plain(guardSentence({ ...guard, code: 'aboveWindow', values }, metric));
    expect(above({ edge: 120e6, lifeKept: 0.8 })).toBe(
      'Set cold above 120 MPa, the band would last less than 80 % as long as at today’s setting. A number from the band’s maker comes first.',
    );
    expect(above({ edge: 120e6 })).toMatch(/^Think again .* of the steel’s yield strength/);
    const below = (edge: number) =>
      plain(guardSentence({ ...guard, code: 'belowWindow', values: { edge } }, metric));
    expect(below(70e6)).toContain('below 70.0 MPa the band slips');
    expect(below(Number.POSITIVE_INFINITY)).toMatch(/^No tension is enough/);
  });

  it('tell a stop as a guard as they do as a refusal', () => {
    const values = { stress: 110e6, limit: 100e6 };
    const stop = { code: 'aboveBandLimit', level: 'stop', values, inputs: [] } as const;
    expect(guardSentence(stop, metric)).toBe(refusalSentence(stop, metric));
  });
});

describe('what a result waits for', () => {
  it('is named as its box is', () => {
    expect(boxName('band.bodyWidth')).toBe('body width');
    expect(boxName('rig.gaugeLengthHalfWidth')).toBe('gauge length (give or take)');
    expect(boxName('readings.3.dial')).toBe('row 4');
    expect(boxName('ways.2.readings')).toBe('readings of its own');
    expect(boxName('ways.2.torque')).toBe('its torque');
    expect(boxName('tensioner.thread')).toBe('thread');
    expect(boxName('tensioner.thread.designation')).toBe('thread');
    expect(boxName('bands.2.thickness')).toBe('other band (thickness)');
    expect(boxName('band.youngsModulus')).toBe('Young’s modulus');
  });

  it('is a short list, and tells what is filled but cannot be used', () => {
    expect(waitingFor(['band.bodyWidth', 'band.thickness'], {})).toBe(
      'Waits for body width and thickness.',
    );
    const five = ['bodyWidth', 'thickness', 'youngsModulus', 'widthOverTeeth', 'x', 'y'];
    expect(
      waitingFor(
        five.map((name) => `band.${name}`),
        {},
      ),
    ).toMatch(/and 2 more boxes\.$/);
    expect(waitingFor(['band.thickness'], { 'band.thickness': 'no' })).toMatch(
      /Look again at thickness\.$/,
    );
  });
});

describe('what was undone', () => {
  it.each([
    [{ do: 'type', path: 'band.bodyWidth', text: '3' }, '29', 'Undone: body width, now 29.'],
    [{ do: 'type', path: 'readings.3.dial', text: '3' }, '', 'Undone: row 4, dial, now empty.'],
    [
      { do: 'choose', path: 'tensioner.collar.kind', text: 'none' },
      'bearing',
      'Undone: what lies under the nut or the screw’s head, now a ball bearing.',
    ],
    [
      { do: 'fill', path: 'readings.0.torque', texts: [] },
      '',
      'Undone: what was put in from row 1, torque on.',
    ],
    [{ do: 'clear', path: 'readings' }, '', 'Undone.'],
    [{ do: 'units', system: 'us' }, '', 'Undone.'],
  ] as const)('%j', (command, text, says) =>
    expect(stepSentence('undo', command, text)).toBe(says),
  );
});

describe('numbers', () => {
  it.each([
    [metric.plusMinus(106.8e6, 20.22e6, 'stress'), '107 ± 20 MPa'],
    [us.plusMinus(130.23e6, 18.75e6, 'stress'), '18 900 ± 2700 psi'],
    [metric.plusMinus(0.2878, 0.053, 'percent'), '28.8 ± 5.3 %'],
    [metric.smallLoad(13.7), '13 700 N·mm'],
    [us.smallLoad(1.3558179483314), '12 in·lbf'],
    [metric.plain(0.00020802, 'stretch'), '0.208 mm'],
  ])('%s', (shown, expected) => expect(plain(shown)).toBe(expected));
});

describe('Enter in a column', () => {
  it.each([
    ['readings.3.dial', 1, 'readings.4.dial'],
    ['readings.0.dial', -1, undefined],
    ['ways.1.readings.0.wholeTurns', 1, 'ways.1.readings.1.wholeTurns'],
    ['band.thickness', 1, undefined],
    ['ways.0.name', 1, undefined],
  ])('from %s by %i goes to %s', (path, rows, next) => expect(pathInColumn(path, rows)).toBe(next));
});

it('names the lines of a budget, and passes on a name that is new', () => {
  expect(budgetName('dial', metric)).toBe('The dial’s own error');
  expect(budgetName('moon', metric)).toBe('moon');
  expect(budgetName('torque', metric)).toBe('Torque wrench, 4 %');
  expect(budgetName('wrench', metric, 0.025)).toBe('Torque wrench, 2.5 %');
});

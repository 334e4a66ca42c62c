/** A reading of the dial in its marks, and a bare number that looks like one. */
import { describe, expect, it } from 'vitest';
import { FIELDS } from '../../src/form/fields.ts';
import { isDial, readDial } from '../../src/form/marks.ts';
import { sheetReader } from '../../src/form/reading.ts';
import { typedFrom } from '../../src/form/typed.ts';

const field = FIELDS['readings.*.dial'];
const ofInch = 0.0001 * 0.0254; // m
const us = (typed: string, graduation: number | undefined = ofInch) =>
  readDial(typed, field, 'us', graduation);
const plain = (text: string | undefined) => text?.replace(/[\u00a0\u202f]/g, ' ');

describe('a reading in marks', () => {
  it.each([
    '56 marks',
    '56 Mark',
    '56marks',
    '56 divisions',
    '56 div',
    '56 graduations',
    '112/2 marks',
  ])('%s is taken by the graduation', (typed) =>
    expect(us(typed).value).toBeCloseTo(56 * ofInch, 12),
  );

  it('needs the graduation, and a number', () => {
    const without = readDial('56 marks', field, 'us', undefined);
    expect([without.value, without.refusal]).toEqual([
      undefined,
      expect.stringContaining('Fill in one graduation of the dial'),
    ]);
    expect(us('some marks')).toEqual({ value: undefined, refusal: expect.any(String) });
  });

  it('leaves every other reading as it was', () => {
    expect(us('0.0056').value).toBeCloseTo(56 * ofInch, 12);
    expect(us('0.1 mm').value).toBeCloseTo(1e-4, 12);
    expect(us('-3 marks').value).toBeCloseTo(-3 * ofInch, 12);
  });
});

describe('a bare number far beyond the dial', () => {
  it.each(['56', '5'])('%s is refused, with what to write', (typed) => {
    const { value, refusal } = us(typed);
    expect(value).toBeUndefined();
    expect(plain(refusal)).toContain(`If ${typed} is marks of 0.0001 in, write ${typed} marks.`);
  });

  it('asks for the graduation where there is none', () =>
    expect(readDial('56', field, 'metric', undefined).refusal).toContain(
      'fill in one graduation of the dial and write 56 marks.',
    ));

  it('is only told of where its unit stands with it', () => {
    const { value, doubt } = us('5 in');
    expect([value, doubt]).toEqual([expect.closeTo(0.127, 9), expect.stringContaining('Usual')]);
  });
});

describe('a sheet with marks', () => {
  it('knows which boxes hold a reading', () =>
    expect(['readings.3.dial', 'ways.0.readings.1.dial', 'rig.dialRuns'].map(isDial)).toEqual([
      true,
      true,
      false,
    ]));

  it('reads them again when the graduation changes, whatever stands first', () => {
    const read = sheetReader();
    const dial = (graduation: string) =>
      read(
        typedFrom([
          ['readings.0.dial', '56 marks'],
          ['rig.graduation', graduation],
        ]),
        'metric',
      ).worksheet.readings[0]?.dial;
    expect(dial('0.01')).toBeCloseTo(0.56e-3, 12);
    expect(dial('0.002')).toBeCloseTo(0.112e-3, 12);
    expect(dial('')).toBeUndefined();
  });
});

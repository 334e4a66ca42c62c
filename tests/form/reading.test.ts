/** From what is typed to the core's worksheet: values, sentences beside boxes, nothing thrown. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyWorksheet } from '../../src/core/worksheet/inputs.ts';
import { evaluateWorksheet } from '../../src/core/worksheet.ts';
import { withChoice, withPasted, withTyped } from '../../src/form/edits.ts';
import { fieldAt, WORKSHEET_FIELDS } from '../../src/form/fields.ts';
import { readWorksheet } from '../../src/form/reading.ts';
import { blankText, isBlankText, MOST_ROWS } from '../../src/form/text.ts';

const typed = (...pairs: readonly (readonly [string, string])[]) =>
  pairs.reduce((text, [path, value]) => withTyped(text, path, value), blankText);

describe('a sheet that is read', () => {
  it('is the core’s empty worksheet while nothing is typed, but for the way the dial runs', () => {
    const { worksheet, refusals } = readWorksheet(blankText, 'metric');
    expect(worksheet).toEqual({
      ...emptyWorksheet,
      rig: { ...emptyWorksheet.rig, dialRunsBackwards: true },
    });
    expect(refusals).toEqual({});
  });

  it('takes fractions, units and both systems', () => {
    const text = typed(['band.bodyWidth', '1 1/4'], ['band.thickness', '1.1 mm']);
    const { band } = readWorksheet(text, 'us').worksheet;
    expect(band.bodyWidth).toBeCloseTo(0.03175, 12);
    expect(band.thickness).toBeCloseTo(0.0011, 12);
  });

  it.each([
    ['band.thickness', '-1', /more than 0/],
    ['tensioner.dragTorque', '-1', /cannot be negative/],
    ['band.thickness', '2 in', /reads as 50.8.mm, which cannot be meant/],
    ['band.thickness', '0.1', /Usual here/],
    ['readings.0.torque', '10000', /cannot be meant/],
    ['readings.0.wholeTurns', '0.5', /not whole/],
  ])('says what is wrong with %s = %s', (path, value, says) => {
    const text = typed([path, value]);
    const { refusals, doubts } = readWorksheet(text, 'metric');
    expect(refusals[path] ?? doubts[path]).toMatch(says);
  });

  it('uses a value that is only unusual, and says so', () => {
    const { worksheet, doubts } = readWorksheet(typed(['band.thickness', '0.3']), 'metric');
    expect(worksheet.band.thickness).toBeCloseTo(0.3e-3, 12);
    expect(doubts['band.thickness']).toMatch(/Usual here: 0.5.to.3.mm/);
  });

  it('has a collar, an own thread and another band only where they are chosen', () => {
    const chosen = withChoice(
      withChoice(withChoice(blankText, 'collar', 'collar'), 'thread', 'own'),
      'otherBand',
      'some',
    );
    const { tensioner, otherBand } = readWorksheet(chosen, 'metric').worksheet;
    expect(tensioner.collar).toBeDefined();
    expect(tensioner.thread.kind).toBe('own');
    expect(otherBand).toBeDefined();
    expect(withChoice(blankText, 'collar', 'hat')).toBe(blankText);
  });

  it('whatever is typed, is reckoned with and never throws', () =>
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.keys(WORKSHEET_FIELDS)),
        fc.oneof(fc.string(), fc.double().map(String)),
        (path, value) => {
          const text = withTyped(blankText, path.replace(/^(readings|ways)\./, '$1.0.'), value);
          expect(() => evaluateWorksheet(readWorksheet(text, 'us').worksheet)).not.toThrow();
        },
      ),
    ));
});

describe('edits', () => {
  it('paste rows of cells to the right and down, and drop what is past the last column', () => {
    const text = withPasted(blankText, 1, 'dial', [['0.4', '0', '0.1', 'extra'], ['0.5']]);
    expect(text.readings[1]).toEqual({ torque: '', dial: '0.4', wholeTurns: '0', turns: '0.1' });
    expect(text.readings[2]?.dial).toBe('0.5');
  });

  it('keep to the most rows, and trim empty ones', () => {
    expect(withTyped(blankText, `readings.${MOST_ROWS.readings}.dial`, '1')).toEqual(blankText);
    const gone = withTyped(typed(['readings.4.dial', '1']), 'readings.4.dial', '');
    expect(isBlankText(gone)).toBe(true);
  });

  it('know every box by its path', () => {
    expect(fieldAt('ways.3.readings.0.dial')?.kind).toBe('stretch');
    expect(fieldAt('toString')).toBeUndefined();
  });
});
